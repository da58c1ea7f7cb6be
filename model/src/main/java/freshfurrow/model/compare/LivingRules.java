package freshfurrow.model.compare;

import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.season.Work;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What decides how springs are lived, besides the variants.
 *
 * @param season name of the base
 * @param file name of its season file
 * @param first first day of the season
 * @param last last day of the season
 * @param units in which people want to see figures
 * @param currency code of ISO 4217, where the season tells it
 * @param weather name of the weather record, with what people should know of it
 * @param recorded springs that are years of the record: numbers 1 to this; those after are generated
 * @param seed of plans, generated springs and hours of rain
 * @param steps moves tried for each plan
 * @param forecastDays days known ahead, today among them; 0 for none
 * @param replanDays days from one new plan to the next; 0 to keep the first
 * @param untreated whether any variant may plant without extract
 * @param timesVary whether times of any variant vary
 * @param works that machines of any variant do
 */
public record LivingRules(
        String season,
        String file,
        LocalDate first,
        LocalDate last,
        DisplayUnits units,
        Optional<String> currency,
        String weather,
        int recorded,
        long seed,
        long steps,
        int forecastDays,
        int replanDays,
        boolean untreated,
        boolean timesVary,
        Set<Work> works) {
    public LivingRules {
        works = Set.copyOf(works);
    }

    /** What variants are compared by. */
    public List<Measure> measures() {
        return Measure.of(untreated, timesVary);
    }
}

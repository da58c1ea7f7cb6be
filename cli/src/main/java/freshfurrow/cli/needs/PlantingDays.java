package freshfurrow.cli.needs;

import static freshfurrow.model.quantity.Factors.M2_PER_HA;

import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashSet;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Days that planting takes at the least, and days there are for it. */
public final class PlantingDays {
    private PlantingDays() {}

    /** The hours in which a planter plants, or a sprayer sprays, on a day that is not closed, without what the day ends with. */
    public static Duration hoursADay(Applicator planter) {
        return Duration.ofSeconds(planter
                .hours()
                .without(planter.kept())
                .flatMap(hours -> hours.within(planter.applyHours()))
                .orElseThrow()
                .spans()
                .stream()
                .mapToLong(span -> (long) span.endS() - span.startS())
                .sum());
    }

    /** What a planter plants in a day when it never stops, ha: effective field capacity times hours a day. */
    public static double areaHaADay(Applicator planter) {
        return planter.fieldCapacityM2PerS() * hoursADay(planter).toSeconds() / M2_PER_HA;
    }

    /** How long it takes to plant a field without a stop, s: area / effective field capacity. */
    static double seconds(Applicator planter, Field field) {
        return field.areaHa() * M2_PER_HA / planter.fieldCapacityM2PerS();
    }

    /**
     * Days to plant some fields with all planters at work and none ever stopping: area / (effective field capacity x hours a
     * day). Where fields are for some planters only, the slowest such group decides.
     */
    public static double needed(Season season, Collection<Field> fields) {
        Set<Set<String>> groups = new HashSet<>();
        fields.forEach(field -> groups.add(allowed(season, field)));
        groups.add(all(season));
        return groups.stream()
                .mapToDouble(group -> daysOf(season, fields, group))
                .max()
                .orElse(0);
    }

    /** Days within the season and within a window of some of the fields that are not closed. Rain is not taken off. */
    public static int there(Season season, Collection<Field> fields) {
        return (int) season.first()
                .datesUntil(season.last().plusDays(1))
                .filter(Predicate.not(season.closed()::contains))
                .filter(date -> fields.stream().anyMatch(field -> isOpen(field, date)))
                .count();
    }

    private static double daysOf(Season season, Collection<Field> fields, Set<String> group) {
        double theirs = fields.stream()
                .filter(field -> group.containsAll(allowed(season, field)))
                .mapToDouble(Field::areaHa)
                .sum();
        double aDay = season.applicators().stream()
                .filter(planter -> group.contains(planter.id()))
                .mapToDouble(PlantingDays::areaHaADay)
                .sum();
        return theirs / aDay;
    }

    private static Set<String> allowed(Season season, Field field) {
        return season.applicators().stream()
                .filter(field::allows)
                .map(Applicator::id)
                .collect(Collectors.toUnmodifiableSet());
    }

    private static Set<String> all(Season season) {
        Set<String> ids = new HashSet<>();
        season.applicators().forEach(planter -> ids.add(planter.id()));
        return ids;
    }

    private static boolean isOpen(Field field, LocalDate date) {
        return !date.isBefore(field.window().first())
                && !date.isAfter(field.window().last());
    }
}

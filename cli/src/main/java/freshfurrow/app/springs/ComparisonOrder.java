package freshfurrow.app.springs;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;

/**
 * Variants of a season to be compared over springs of its weather record.
 *
 * @param season a season file, or a folder that holds season.yaml
 * @param variants for each variant, merge patches over the season file that are applied in order
 * @param forecastDays of weather known ahead, today among them, 0 to 14
 * @param replanDays plan what is left again every so many days, 0 to 60; 0 to keep to the plan
 * @param foresight whether the first springs are also planned with their weather known beforehand
 * @param steps moves to try for each plan, 0 or more
 * @param seed of plans and springs
 * @param threads to work on, 1 or more
 * @param reserves to try for the first of the season and its variants whose times vary, each a variant of its own; not below zero
 */
public record ComparisonOrder(
        Path season,
        List<List<Path>> variants,
        SpringRange springs,
        int forecastDays,
        int replanDays,
        boolean foresight,
        long steps,
        long seed,
        int threads,
        List<Duration> reserves) {
    public ComparisonOrder {
        variants = List.copyOf(variants);
        reserves = List.copyOf(reserves);
    }

    /** With no reserves to be tried. */
    public ComparisonOrder(
            Path season,
            List<List<Path>> variants,
            SpringRange springs,
            int forecastDays,
            int replanDays,
            boolean foresight,
            long steps,
            long seed,
            int threads) {
        this(season, variants, springs, forecastDays, replanDays, foresight, steps, seed, threads, List.of());
    }
}

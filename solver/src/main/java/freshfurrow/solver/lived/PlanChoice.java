package freshfurrow.solver.lived;

import freshfurrow.model.compare.LivingRules;
import freshfurrow.model.compare.Measure;
import freshfurrow.model.compare.SpringFigures;
import freshfurrow.model.season.Season;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.statistics.descriptive.StandardDeviation;

/**
 * Plans that look alike before the season do not live alike in rain. So several are made, each with other luck, all are lived through
 * springs that are kept for this, and the one that lives best there is taken. How far the others lie from one another tells how much
 * of a difference between variants may be the luck of their plans.
 *
 * @param plan the one that leaves least late and unplanted, then has fewest fills
 * @param luck standard deviation, between the plans, of the mean of each measure over these springs
 */
record PlanChoice(DryPlan plan, Map<Measure, Double> luck) {
    /** Plans made of each variant, which share its steps. */
    static final int PLANS = 4;

    private static final long SEED_STEP = 1_000_003;

    private record Lived(DryPlan plan, List<SpringFigures> springs) {
        double mean(Measure measure) {
            return springs.stream().mapToDouble(measure::of).average().orElse(0);
        }
    }

    /**
     * The choice by rules.
     *
     * @param training numbers of the springs to choose by
     */
    static PlanChoice of(
            Season season,
            LivingRules rules,
            SpringSource springs,
            List<Integer> training,
            SpringWorkers workers,
            int threads) {
        List<Lived> tried = new ArrayList<>();
        for (int i = 0; i < PLANS; i++) {
            DryPlan plan = DryPlan.of(season, rules.steps() / PLANS, rules.seed() + i * SEED_STEP, threads);
            SpringLife life = new SpringLife(plan.season(), plan.lists(), rules.forecastDays(), Optional.empty());
            tried.add(new Lived(plan, workers.each(training, number -> life.live(springs.spring(number))
                    .figures())));
        }
        Map<Measure, Double> luck = new EnumMap<>(Measure.class);
        for (Measure measure : Measure.values()) {
            luck.put(
                    measure,
                    StandardDeviation.of(tried.stream()
                                    .mapToDouble(lived -> lived.mean(measure))
                                    .toArray())
                            .getAsDouble());
        }
        return new PlanChoice(best(tried, season.days()).plan(), luck);
    }

    private static Lived best(List<Lived> tried, int days) {
        Lived best = tried.get(0);
        for (Lived lived : tried) {
            double gain = late(best, days) - late(lived, days);
            if (gain > 0 || (gain == 0 && lived.mean(Measure.FILLS) < best.mean(Measure.FILLS))) {
                best = lived;
            }
        }
        return best;
    }

    /** Area not planted counts as late by all days of the season. */
    private static double late(Lived lived, int days) {
        return lived.mean(Measure.LATE) + lived.mean(Measure.UNSERVED) * days;
    }
}

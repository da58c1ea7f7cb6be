package freshfurrow.solver.lived;

import freshfurrow.model.compare.Measure;
import freshfurrow.model.compare.SpringFigures;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.statistics.descriptive.StandardDeviation;

/**
 * Plans that look alike before the season do not live alike in rain. So each variant lives all of its plans through springs that are
 * kept for this, then also the best one of each other variant, and the one that lives best is taken. So a variant never has a worse
 * plan than another only because the search did not come by it.
 */
final class PlanChoice {
    private final SpringSource springs;
    private final List<Integer> training;
    private final int forecastDays;
    private final SpringWorkers workers;

    /** @param training numbers of the springs to choose by */
    PlanChoice(SpringSource springs, List<Integer> training, int forecastDays, SpringWorkers workers) {
        this.springs = springs;
        this.training = training;
        this.forecastDays = forecastDays;
        this.workers = workers;
    }

    /** How many springs are lived to choose among so many plans of each of so many variants. */
    static int springsLived(int variants, int plans, int training) {
        return variants * (plans + variants - 1) * training;
    }

    /**
     * The plan that is taken for a variant.
     *
     * @param plan the one that leaves least late and unplanted, then has fewest fills
     * @param luck standard deviation, between the tries, of the difference in the mean of each measure from the first variant's plan of
     *     the same try; 0 for the first variant itself
     */
    record Chosen(SpringPlan plan, Map<Measure, Double> luck) {}

    private record Lived(SpringPlan plan, List<SpringFigures> springs) {
        double mean(Measure measure) {
            return springs.stream().mapToDouble(measure::of).average().orElse(0);
        }

        /** Area not planted counts as late by all days of the season. */
        double late() {
            return mean(Measure.LATE)
                    + mean(Measure.UNSERVED) * plan.season().season().days();
        }
    }

    /** The choice for each variant from the plans of each try, one of each variant. */
    List<Chosen> among(List<List<SpringPlan>> tries) {
        List<List<Lived>> lived = new ArrayList<>();
        List<Lived> best = new ArrayList<>();
        for (int v = 0; v < tries.get(0).size(); v++) {
            int variant = v;
            List<Lived> own =
                    tries.stream().map(plans -> live(plans.get(variant))).toList();
            lived.add(own);
            best.add(best(own));
        }
        return IntStream.range(0, lived.size())
                .mapToObj(v -> new Chosen(best(followed(best, v)).plan(), luck(lived.get(0), lived.get(v))))
                .toList();
    }

    /** The best plan of each variant as another one lives it. */
    private List<Lived> followed(List<Lived> best, int variant) {
        Lived own = best.get(variant);
        return IntStream.range(0, best.size())
                .mapToObj(other -> other == variant
                        ? own
                        : live(best.get(other).plan().in(own.plan().season())))
                .toList();
    }

    private Lived live(SpringPlan plan) {
        SpringLife life = new SpringLife(plan.season(), plan.lists(), forecastDays, Optional.empty());
        return new Lived(plan, workers.each(training, number -> life.live(springs.spring(number))
                .figures()));
    }

    /** The one that leaves least late, then has fewest fills; the first of those alike. */
    private static Lived best(List<Lived> tried) {
        Lived best = tried.get(0);
        for (Lived lived : tried) {
            double gain = best.late() - lived.late();
            if (gain > 0 || (gain == 0 && lived.mean(Measure.FILLS) < best.mean(Measure.FILLS))) {
                best = lived;
            }
        }
        return best;
    }

    private static Map<Measure, Double> luck(List<Lived> base, List<Lived> variant) {
        Map<Measure, Double> luck = new EnumMap<>(Measure.class);
        for (Measure measure : Measure.values()) {
            double[] differences = IntStream.range(0, base.size())
                    .mapToDouble(i -> variant.get(i).mean(measure) - base.get(i).mean(measure))
                    .toArray();
            luck.put(measure, StandardDeviation.of(differences).getAsDouble());
        }
        return luck;
    }
}

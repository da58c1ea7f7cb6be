package freshfurrow.solver.lived;

import freshfurrow.model.compare.Measure;
import freshfurrow.model.compare.SpringFigures;
import freshfurrow.model.season.Costs;
import freshfurrow.model.timeline.CompiledSeason;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.statistics.descriptive.StandardDeviation;

/**
 * Plans that look alike before the season do not live alike in rain. So each variant lives all plans, its own and those of the others,
 * through springs that are kept for this, and the one that lives best is taken: a variant never has a worse plan than another only
 * because the search did not come by it.
 */
final class PlanChoice {
    private final SpringSource springs;
    private final List<Integer> training;
    private final int forecastDays;
    private final List<Measure> measures;
    private final SpringWorkers workers;

    /**
     * A choice.
     *
     * @param training numbers of the springs to choose by
     * @param measures of which the luck is told
     */
    PlanChoice(
            SpringSource springs,
            List<Integer> training,
            int forecastDays,
            List<Measure> measures,
            SpringWorkers workers) {
        this.measures = measures;
        this.springs = springs;
        this.training = training;
        this.forecastDays = forecastDays;
        this.workers = workers;
    }

    /** How many springs are lived to choose among so many plans of each of so many variants. */
    static int springsLived(int variants, int plans, int training) {
        return variants * variants * plans * training;
    }

    /**
     * The plan that is taken for a variant.
     *
     * @param plan the one that costs least by money, or leaves least late, unplanted and without extract, then has fewest fills
     * @param luck standard deviation, between the tries, of the difference in the mean of each measure from the first variant, each by
     *     the best plan of the same try; 0 for the first variant itself
     */
    record Chosen(SpringPlan plan, Map<Measure, Double> luck) {}

    private record Lived(SpringPlan plan, List<SpringFigures> springs) {
        double mean(Measure measure) {
            return springs.stream().mapToDouble(measure::of).average().orElse(0);
        }

        /** What is made least: by money what springs cost, else what they leave late, unplanted and without extract. */
        double loss() {
            return springs.get(0).runningCost().isPresent()
                    ? springs.stream()
                            .mapToDouble(spring -> spring.runningCost().orElseThrow())
                            .average()
                            .orElseThrow()
                    : late();
        }

        private double late() {
            return new SpringLoss(plan.season().season())
                    .haDays(mean(Measure.LATE), mean(Measure.UNSERVED), untreatedHa());
        }

        private double untreatedHa() {
            return springs.stream()
                    .mapToDouble(SpringFigures::untreatedHa)
                    .average()
                    .orElse(0);
        }
    }

    /** The choice for each variant from the plans of each try, one of each variant. */
    List<Chosen> among(List<List<SpringPlan>> tries) {
        List<List<Lived>> chosen = new ArrayList<>();
        for (SpringPlan variant : tries.get(0)) {
            chosen.add(tries.stream()
                    .map(plans -> best(followed(plans, variant.season())))
                    .toList());
        }
        return chosen.stream()
                .map(ofTries -> new Chosen(best(ofTries).plan(), luck(chosen.get(0), ofTries)))
                .toList();
    }

    private List<Lived> followed(List<SpringPlan> plans, CompiledSeason variant) {
        return plans.stream().map(plan -> live(plan.in(variant))).toList();
    }

    private Lived live(SpringPlan plan) {
        SpringLife life = new SpringLife(plan.season(), plan.orders(), forecastDays, Optional.empty());
        Optional<Costs> prices = plan.season().season().goals().byMoney();
        return new Lived(plan, workers.each(training, number -> {
            LivedSpring lived = life.live(springs, number);
            return prices.map(lived::at).orElseGet(lived::figures);
        }));
    }

    /** The one that loses least, then has fewest fills; the first of those alike. */
    private static Lived best(List<Lived> tried) {
        Lived best = tried.get(0);
        for (Lived lived : tried) {
            double gain = best.loss() - lived.loss();
            if (gain > 0 || (gain == 0 && lived.mean(Measure.FILLS) < best.mean(Measure.FILLS))) {
                best = lived;
            }
        }
        return best;
    }

    private Map<Measure, Double> luck(List<Lived> base, List<Lived> variant) {
        Map<Measure, Double> luck = new EnumMap<>(Measure.class);
        for (Measure measure : measures) {
            double[] differences = IntStream.range(0, base.size())
                    .mapToDouble(i -> variant.get(i).mean(measure) - base.get(i).mean(measure))
                    .toArray();
            luck.put(measure, StandardDeviation.of(differences).getAsDouble());
        }
        return luck;
    }
}

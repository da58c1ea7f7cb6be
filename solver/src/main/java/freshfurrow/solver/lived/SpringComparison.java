package freshfurrow.solver.lived;

import freshfurrow.model.plan.Resource;
import freshfurrow.model.season.Costs;
import freshfurrow.model.season.GroundRecord;
import freshfurrow.solver.compare.ComparedSprings;
import freshfurrow.solver.compare.ComparedVariant;
import freshfurrow.solver.compare.LivedVariant;
import freshfurrow.solver.compare.LivingRules;
import freshfurrow.solver.compare.SpringFigures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Plans variants of a season and has them live through the same springs. What comes out depends on the variants, the rules and the
 * numbers of the springs, not on the number of threads.
 */
public final class SpringComparison {
    /** Springs that are lived again with one resource made free: the first ones, whichever springs are compared. */
    public static final int SAMPLE = 10;

    /** Planning again tries so many times fewer moves than the first plan. */
    public static final int REPLANNING_SHARE = 20;

    private final LivingRules rules;
    private final SpringSource springs;
    private final int threads;
    private final SpringProgress progress;

    /** A comparison by rules, on so many threads, 1 or more. */
    public SpringComparison(LivingRules rules, SpringSource springs, int threads, SpringProgress progress) {
        this.rules = rules;
        this.springs = springs;
        this.threads = threads;
        this.progress = progress;
    }

    /**
     * The candidates through the springs.
     *
     * @param candidates the base first
     * @param numbers of the springs, ascending
     * @param sample springs to find out with what holds a variant back
     * @param training springs to choose plans by, best not among those compared
     */
    public ComparedSprings run(
            List<Candidate> candidates, List<Integer> numbers, List<Integer> sample, List<Integer> training) {
        int tasks = candidates.size()
                * (numbers.size()
                        + PlanChoice.PLANS * training.size()
                        + (sample.isEmpty() ? 0 : sample.size() + Resource.values().length));
        try (SpringWorkers workers = new SpringWorkers(threads, tasks, progress)) {
            List<ComparedVariant> variants = new ArrayList<>();
            for (Candidate candidate : candidates) {
                variants.add(variant(workers, candidate, numbers, sample, training));
            }
            return new ComparedSprings(rules, numbers, variants);
        }
    }

    private ComparedVariant variant(
            SpringWorkers workers,
            Candidate candidate,
            List<Integer> numbers,
            List<Integer> sample,
            List<Integer> training) {
        PlanChoice choice = PlanChoice.of(candidate.season(), rules, springs, training, workers, threads);
        DryPlan plan = choice.plan();
        SpringLife life = new SpringLife(plan.season(), plan.lists(), rules.forecastDays(), replanning());
        List<SpringFigures> rows = workers.each(
                numbers, number -> life.live(springs.spring(number)).figures());
        Optional<Costs> costs = candidate.costs();
        OptionalDouble yearly =
                costs.isPresent() ? OptionalDouble.of(costs.get().yearlySum()) : OptionalDouble.empty();
        List<SpringFigures> priced =
                rows.stream().map(row -> costs.map(row::at).orElse(row)).toList();
        return new ComparedVariant(
                new LivedVariant(candidate.name(), yearly, choice.luck(), priced),
                candidate.sha256(),
                limits(workers, plan, life, sample));
    }

    private Optional<Replanning> replanning() {
        return rules.replanDays() == 0
                ? Optional.empty()
                : Optional.of(new Replanning(rules.replanDays(), rules.steps() / REPLANNING_SHARE, rules.seed()));
    }

    private List<ComparedVariant.ResourceShare> limits(
            SpringWorkers workers, DryPlan plan, SpringLife life, List<Integer> sample) {
        if (sample.isEmpty()) {
            return List.of();
        }
        List<SpringFigures> before =
                workers.each(sample, number -> life.live(springs.spring(number)).figures());
        SpringLimits limits = new SpringLimits(plan, rules.forecastDays(), replanning());
        List<GroundRecord> grounds = sample.stream().map(springs::spring).toList();
        return workers.each(
                List.of(Resource.values()), free -> limits.share(free, before, limits.freed(free, grounds)));
    }
}

package freshfurrow.solver.lived;

import freshfurrow.model.compare.ComparedSprings;
import freshfurrow.model.compare.ComparedVariant;
import freshfurrow.model.compare.Foresight;
import freshfurrow.model.compare.LivedVariant;
import freshfurrow.model.compare.LivingRules;
import freshfurrow.model.compare.SpringFigures;
import freshfurrow.model.plan.Resource;
import freshfurrow.model.season.Costs;
import freshfurrow.model.season.Season;
import freshfurrow.solver.threads.Workers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * Plans variants of a season and has them live through the same springs. What comes out depends on the variants, the rules and the
 * numbers of the springs, not on the number of threads.
 */
public final class SpringComparison {
    /** Springs that are lived again with one resource made free: the first ones, whichever springs are compared. */
    public static final int SAMPLE = 10;

    /** Planning again tries so many times fewer moves than the first plan. */
    public static final int REPLANNING_SHARE = 20;

    /** Plans made of each variant, which share its steps. */
    private static final int PLANS = 4;

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
     * @param foresight whether to plan the sample with its weather known beforehand as well
     */
    public ComparedSprings run(
            List<Candidate> candidates,
            List<Integer> numbers,
            List<Integer> sample,
            List<Integer> training,
            boolean foresight) {
        int tasks = PlanChoice.springsLived(candidates.size(), PLANS, training.size())
                + candidates.size()
                        * (numbers.size()
                                + (foresight ? sample.size() : 0)
                                + sample.size()
                                + (sample.isEmpty() ? 0 : Resource.values().length));
        try (Workers pool = new Workers(threads, "spring")) {
            SpringWorkers workers = new SpringWorkers(pool, tasks, progress);
            List<Season> seasons = candidates.stream().map(Candidate::season).toList();
            List<List<SpringPlan>> plans =
                    new SharedPlans(rules.steps() / PLANS, rules.seed()).of(seasons, PLANS, pool);
            List<PlanChoice.Chosen> chosen =
                    new PlanChoice(springs, training, rules.forecastDays(), rules.measures(), workers).among(plans);
            List<ComparedVariant> variants = new ArrayList<>();
            for (int i = 0; i < candidates.size(); i++) {
                variants.add(variant(workers, candidates.get(i), chosen.get(i), numbers, sample, foresight));
            }
            return new ComparedSprings(rules, numbers, variants);
        }
    }

    private ComparedVariant variant(
            SpringWorkers workers,
            Candidate candidate,
            PlanChoice.Chosen choice,
            List<Integer> numbers,
            List<Integer> sample,
            boolean foresight) {
        SpringPlan plan = choice.plan();
        SpringLife life = new SpringLife(plan.season(), plan.orders(), rules.forecastDays(), replanning());
        Optional<Costs> costs = candidate.costs();
        List<SpringFigures> rows = workers.each(numbers, number -> {
            LivedSpring lived = life.live(springs, number);
            return costs.map(lived::at).orElseGet(lived::figures);
        });
        OptionalDouble yearly =
                costs.isPresent() ? OptionalDouble.of(costs.get().yearlySum()) : OptionalDouble.empty();
        List<SpringFigures> sampled =
                workers.each(sample, number -> life.live(springs, number).figures());
        return new ComparedVariant(
                new LivedVariant(candidate.name(), yearly, choice.luck(), rows),
                candidate.sha256(),
                limits(workers, plan, sample, sampled),
                foresight && !sample.isEmpty()
                        ? Optional.of(foresight(workers, candidate.season(), sample, sampled))
                        : Optional.empty(),
                candidate.reserve());
    }

    private Optional<Replanning> replanning() {
        return rules.replanDays() == 0
                ? Optional.empty()
                : Optional.of(new Replanning(rules.replanDays(), rules.steps() / REPLANNING_SHARE, rules.seed()));
    }

    private List<ComparedVariant.ResourceShare> limits(
            SpringWorkers workers, SpringPlan plan, List<Integer> sample, List<SpringFigures> before) {
        if (sample.isEmpty()) {
            return List.of();
        }
        SpringLimits limits = new SpringLimits(plan, rules.forecastDays(), replanning());
        return workers.each(
                List.of(Resource.values()), free -> limits.share(free, before, limits.freed(free, springs, sample)));
    }

    private Foresight foresight(SpringWorkers workers, Season season, List<Integer> sample, List<SpringFigures> lived) {
        ForeseenSprings foreseen = new ForeseenSprings(season, rules.steps() / PLANS, rules.seed());
        List<Integer> places = IntStream.range(0, sample.size()).boxed().toList();
        return ForeseenSprings.means(
                workers.each(places, i -> foreseen.foreseen(springs.spring(sample.get(i)), lived.get(i))), lived);
    }
}

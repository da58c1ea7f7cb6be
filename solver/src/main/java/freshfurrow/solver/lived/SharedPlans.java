package freshfurrow.solver.lived;

import freshfurrow.model.season.Season;
import freshfurrow.solver.threads.Workers;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Plans of variants that share what they find, so that none is worse than another for want of luck. Each variant is searched for apart
 * with half of its steps; then each goes on from whichever of all these plans is best for it, with the other half and the same luck.
 * That is one try; several are made, each with other luck.
 */
final class SharedPlans {
    private static final long SEED_STEP = 1_000_003;

    private final long steps;
    private final long seed;

    /** @param steps moves tried for each plan of a variant, 0 or more */
    SharedPlans(long steps, long seed) {
        this.steps = steps;
        this.seed = seed;
    }

    /** For each of so many tries a plan of each variant, in their order. */
    List<List<SpringPlan>> of(List<Season> variants, int tries, Workers workers) {
        List<SpringPlan> first = workers.each(variants, season -> SpringPlan.first(SpringPlan.dry(season)));
        return workers.each(IntStream.range(0, tries).boxed().toList(), attempt -> plans(first, attempt));
    }

    private List<SpringPlan> plans(List<SpringPlan> first, int attempt) {
        long seedApart = seed + 2L * attempt * SEED_STEP;
        long seedShared = seedApart + SEED_STEP;
        long half = steps / 2;
        List<SpringPlan> apart =
                first.stream().map(plan -> plan.improved(half, seedApart, 1)).toList();
        return first.stream()
                .map(own -> best(apart, own).improved(steps - half, seedShared, 1))
                .toList();
    }

    /** The best of the plans when followed in the season of the variant's own; of plans alike the first. */
    private static SpringPlan best(List<SpringPlan> plans, SpringPlan own) {
        return plans.stream()
                .map(plan -> plan.in(own.season()))
                .max(Comparator.comparing(SpringPlan::score))
                .orElse(own);
    }
}

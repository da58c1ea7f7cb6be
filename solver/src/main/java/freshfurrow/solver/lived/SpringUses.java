package freshfurrow.solver.lived;

import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.plan.Resource;
import freshfurrow.model.season.Season;
import freshfurrow.model.supply.SpringUse;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.limits.FreedSeason;
import freshfurrow.solver.threads.Workers;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a season uses in springs, one entry a spring.
 *
 * @param asItIs with the lots of the season
 * @param withCompostFree the same planting orders where there is more than enough compost from the first day on, and all fields get it
 */
public record SpringUses(List<SpringUse> asItIs, List<SpringUse> withCompostFree) {
    public SpringUses {
        asItIs = List.copyOf(asItIs);
        withCompostFree = List.copyOf(withCompostFree);
    }

    /**
     * Plans the season as if it stayed dry and lives it.
     *
     * @param numbers of the springs
     * @param steps moves tried for the plan
     * @param threads 1 or more
     */
    public static SpringUses of(
            Season season,
            SpringSource springs,
            List<Integer> numbers,
            long steps,
            long seed,
            int threads,
            SpringProgress progress) {
        SpringPlan plan = SpringPlan.first(SpringPlan.dry(season)).improved(steps, seed, threads);
        CompiledSeason freed = CompiledSeason.of(allTreated(FreedSeason.of(
                plan.season().season(), Resource.COMPOST, plan.season().roads())));
        try (Workers pool = new Workers(threads, "spring")) {
            SpringWorkers workers = new SpringWorkers(pool, 2 * numbers.size(), progress);
            return new SpringUses(
                    uses(plan.season(), plan.orders(), springs, numbers, workers),
                    uses(freed, PlantingOrders.withExtract(plan.orders().byPlanter()), springs, numbers, workers));
        }
    }

    private static Season allTreated(Season season) {
        return season.change()
                .goals(season.goals().withUntreatedDays(OptionalDouble.empty()))
                .season();
    }

    private static List<SpringUse> uses(
            CompiledSeason season,
            PlantingOrders orders,
            SpringSource springs,
            List<Integer> numbers,
            SpringWorkers workers) {
        SpringLife life = new SpringLife(season, orders, 0, Optional.empty());
        return workers.each(numbers, number -> UseOfSpring.of(season.season(), life.live(springs, number)));
    }
}

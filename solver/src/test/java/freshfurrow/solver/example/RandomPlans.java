package freshfurrow.solver.example;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import freshfurrow.solver.construction.FirstLists;
import java.util.ArrayList;
import java.util.List;

/** Plans of a season that are not all bad. */
public final class RandomPlans {
    private RandomPlans() {}

    /** The best of the first lists, and lists at random. */
    public static List<Plan> of(CompiledSeason compiled, long seed) {
        List<Plan> plans = new ArrayList<>();
        plans.add(record(compiled, FirstLists.best(compiled).orders(compiled.season())));
        for (int i = 0; i < 4; i++) {
            plans.add(record(compiled, RandomSeasons.lists(compiled.season(), seed + i)));
        }
        return plans;
    }

    /** What comes of orders. */
    public static Plan record(CompiledSeason compiled, PlantingOrders orders) {
        return PlanRecorder.record(
                compiled,
                orders,
                new Plan.SeasonSource("", "", "", compiled.season().units()));
    }

    /** What comes of lists. */
    public static Plan record(CompiledSeason compiled, List<List<String>> lists) {
        return record(compiled, RandomSeasons.orders(compiled.season(), lists));
    }
}

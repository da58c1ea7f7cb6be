package freshfurrow.solver.lived;

import static freshfurrow.model.quantity.Factors.DAY_S;

import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.season.Season;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Planning what is left of a season again each so many days, as if it stayed dry from then on.
 *
 * @param days from one plan to the next, 1 or more
 * @param steps moves tried each time, 0 or more
 * @param seed of each search
 */
public record Replanning(int days, long steps, long seed) {
    public Replanning {
        if (days < 1 || steps < 0) {
            throw new IllegalArgumentException("planning again every " + days + " days with " + steps + " steps");
        }
    }

    /** The first midnight after {@code now} on which it is planned again, s since the season's first midnight. */
    int nextAfter(int now) {
        int every = days * DAY_S;
        return (now / every + 1) * every;
    }

    boolean isDue(int now) {
        return now > 0 && now % (days * DAY_S) == 0;
    }

    /**
     * New orders for what is left. A field that the search leaves out stays at the end of the order that it was in.
     *
     * @param before the orders until now
     */
    PlantingOrders orders(Season left, PlantingOrders before) {
        PlantingOrders found = SpringPlan.goingOn(SpringPlan.dry(left), before)
                .improved(steps, seed, 1)
                .orders();
        Set<String> listed = new HashSet<>();
        found.byPlanter().forEach(listed::addAll);
        List<List<String>> lists = new ArrayList<>();
        for (int planter = 0; planter < found.byPlanter().size(); planter++) {
            List<String> list = new ArrayList<>(found.byPlanter().get(planter));
            before.byPlanter().get(planter).stream()
                    .filter(field -> !listed.contains(field))
                    .forEach(list::add);
            lists.add(list);
        }
        return found.with(lists);
    }
}

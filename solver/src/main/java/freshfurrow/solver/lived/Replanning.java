package freshfurrow.solver.lived;

import static freshfurrow.model.quantity.Factors.DAY_S;

import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
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
     * New lists for what is left. A field that the search leaves out stays at the end of the list that it was in.
     *
     * @param before the lists until now
     */
    List<List<Field>> lists(Season left, List<List<Field>> before) {
        List<List<String>> followed = before.stream()
                .map(list -> list.stream().map(Field::id).toList())
                .toList();
        List<List<String>> found = SpringPlan.goingOn(SpringPlan.dry(left), followed)
                .improved(steps, seed, 1)
                .lists();
        Map<String, Field> byId = new HashMap<>();
        before.forEach(list -> list.forEach(field -> byId.put(field.id(), field)));
        Set<String> listed = new HashSet<>();
        found.forEach(listed::addAll);
        List<List<Field>> lists = new ArrayList<>();
        for (int planter = 0; planter < found.size(); planter++) {
            List<Field> list = new ArrayList<>();
            for (String id : found.get(planter)) {
                Field field = byId.get(id);
                if (field != null) {
                    list.add(field);
                }
            }
            before.get(planter).stream()
                    .filter(field -> !listed.contains(field.id()))
                    .forEach(list::add);
            lists.add(list);
        }
        return lists;
    }
}

package freshfurrow.solver.search;

import freshfurrow.solver.estimate.NearFields;
import freshfurrow.solver.schedule.PlanterList;
import freshfurrow.solver.schedule.Visit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** Takes some fields out of lists that belong together: near ones, or a string of one list and of those that pass near it. */
final class Ruin {
    private static final int MOST = 8;
    private static final int ONE_IN_IS_LEFT = 3;

    private final WorkingLists lists;
    private final NearFields near;
    private final Random random;

    Ruin(WorkingLists lists, NearFields near, Random random) {
        this.lists = lists;
        this.near = near;
        this.random = random;
    }

    /** The fields taken out, and as many at the most of those that stood in no list. */
    List<Integer> fields() {
        int fields = lists.schedule().season().fieldCount();
        int most = 1 + random.nextInt(Math.min(MOST, fields));
        int centre = random.nextInt(fields);
        List<Integer> leftOut = lists.leftOut();
        List<Integer> taken = new ArrayList<>();
        if (random.nextBoolean()) {
            take(centre, taken);
            for (int other : near.near(random.nextInt(near.kinds()), centre)) {
                if (taken.size() < most && random.nextInt(ONE_IN_IS_LEFT) > 0) {
                    take(other, taken);
                }
            }
        } else {
            int string = 1 + random.nextInt(most);
            takeString(centre, string, taken);
            for (int other : near.near(0, centre)) {
                takeString(other, Math.min(string, most - taken.size()), taken);
            }
        }
        Collections.shuffle(leftOut, random);
        taken.addAll(leftOut.subList(0, Math.min(most, leftOut.size())));
        return taken;
    }

    private void take(int field, List<Integer> taken) {
        Visit visit = lists.standing(field);
        PlanterList list = lists.listOf(visit);
        if (list != null) {
            lists.remove(list, lists.indexOf(visit));
            taken.add(field);
        }
    }

    /** Some fields that stand one after the other, the field among them. */
    private void takeString(int field, int length, List<Integer> taken) {
        Visit visit = lists.standing(field);
        PlanterList list = lists.listOf(visit);
        if (list == null || length < 1) {
            return;
        }
        int begin = Math.max(0, lists.indexOf(visit) - random.nextInt(length));
        for (int i = 0; i < length && begin < list.visits().size(); i++) {
            taken.add(lists.remove(list, begin).field());
        }
    }
}

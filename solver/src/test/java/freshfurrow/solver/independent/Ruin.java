package freshfurrow.solver.independent;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Takes some fields out of lists: near ones, a string of one list, or strings of lists that are near one another. */
final class Ruin {
    private static final int MOST = 8;

    private final Neighbours neighbours;
    private final Random random;

    Ruin(Neighbours neighbours, Random random) {
        this.neighbours = neighbours;
        this.random = random;
    }

    /** The fields taken out, with up to as many that stood in no list. */
    List<Integer> ruin(PlainLists lists, int fields) {
        int count = 1 + random.nextInt(Math.min(MOST, fields));
        int centre = random.nextInt(fields);
        List<Integer> out = new ArrayList<>(lists.leftOut());
        while (out.size() > count) {
            out.remove(random.nextInt(out.size()));
        }
        List<Integer> taken = new ArrayList<>();
        int kind = random.nextInt(3);
        if (lists.planterOf(centre) == PlainLists.NONE || kind == 0) {
            near(lists, centre, count, taken);
        } else if (kind == 1) {
            string(lists, centre, count, taken);
        } else {
            int shorter = 1 + random.nextInt(count);
            string(lists, centre, shorter, taken);
            for (int other : neighbours.of(centre)) {
                if (taken.size() < count && lists.planterOf(other) != PlainLists.NONE) {
                    string(lists, other, Math.min(shorter, count - taken.size()), taken);
                }
            }
        }
        taken.addAll(out);
        return taken;
    }

    private void near(PlainLists lists, int centre, int count, List<Integer> taken) {
        take(lists, centre, taken);
        int[] near = neighbours.of(centre);
        for (int i = 0; i < near.length && taken.size() < count; i++) {
            if (random.nextInt(3) > 0) {
                take(lists, near[i], taken);
            }
        }
    }

    private void string(PlainLists lists, int field, int length, List<Integer> taken) {
        int planter = lists.planterOf(field);
        int first = Math.max(0, lists.indexOf(field) - random.nextInt(length));
        for (int i = 0; i < length && first < lists.size(planter); i++) {
            take(lists, lists.field(planter, first), taken);
        }
    }

    private static void take(PlainLists lists, int field, List<Integer> taken) {
        if (lists.planterOf(field) != PlainLists.NONE) {
            lists.remove(field);
            taken.add(field);
        }
    }
}

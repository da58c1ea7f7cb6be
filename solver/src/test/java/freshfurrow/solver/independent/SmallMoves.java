package freshfurrow.solver.independent;

import freshfurrow.model.timeline.CompiledSeason;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Small changes at random: a field or a run of them beside another, two exchanged, the rests of two lists exchanged. */
final class SmallMoves {
    private static final int LONGEST_RUN = 6;

    private final CompiledSeason season;
    private final Neighbours neighbours;
    private final Random random;

    SmallMoves(CompiledSeason season, Neighbours neighbours, Random random) {
        this.season = season;
        this.neighbours = neighbours;
        this.random = random;
    }

    /** Whether anything was changed. */
    boolean change(PlainLists lists) {
        int field = random.nextInt(season.fieldCount());
        int[] near = neighbours.of(field);
        int other = random.nextBoolean() ? near[random.nextInt(near.length)] : random.nextInt(season.fieldCount());
        if (field == other || lists.planterOf(field) == PlainLists.NONE || lists.planterOf(other) == PlainLists.NONE) {
            return false;
        }
        return switch (random.nextInt(4)) {
            case 0 -> moveRun(lists, field, 1, other);
            case 1 -> moveRun(lists, field, 2 + random.nextInt(LONGEST_RUN - 1), other);
            case 2 -> swap(lists, field, other);
            default -> exchangeRests(lists, lists.planterOf(field), lists.planterOf(other), field, other);
        };
    }

    private boolean moveRun(PlainLists lists, int field, int run, int other) {
        int from = lists.planterOf(field);
        int to = lists.planterOf(other);
        List<Integer> taken = new ArrayList<>();
        int first = lists.indexOf(field);
        while (taken.size() < run && first < lists.size(from) && lists.field(from, first) != other) {
            if (!season.allows(to, lists.field(from, first))) {
                return false;
            }
            taken.add(lists.remove(from, first));
        }
        int index = lists.indexOf(other) + random.nextInt(2);
        boolean turned = random.nextBoolean();
        for (int i = 0; i < taken.size(); i++) {
            lists.add(to, turned ? index : index + i, taken.get(i));
        }
        return true;
    }

    private boolean swap(PlainLists lists, int field, int other) {
        int one = lists.planterOf(field);
        int two = lists.planterOf(other);
        if (!season.allows(one, other) || !season.allows(two, field)) {
            return false;
        }
        int here = lists.indexOf(field);
        int there = lists.indexOf(other);
        int last = Math.max(here, there);
        int first = Math.min(here, there);
        if (one == two) {
            int later = lists.remove(one, last);
            int earlier = lists.remove(one, first);
            lists.add(one, first, later);
            lists.add(one, last, earlier);
        } else {
            int entry = lists.remove(one, here);
            lists.add(one, here, lists.remove(two, there));
            lists.add(two, there, entry);
        }
        return true;
    }

    private boolean exchangeRests(PlainLists lists, int one, int two, int field, int other) {
        if (one == two) {
            return false;
        }
        List<Integer> ofOne = rest(lists, one, lists.indexOf(field));
        List<Integer> ofTwo = rest(lists, two, lists.indexOf(other));
        ofOne.forEach(entry -> lists.add(two, lists.size(two), entry));
        ofTwo.forEach(entry -> lists.add(one, lists.size(one), entry));
        return ofOne.stream().allMatch(entry -> season.allows(two, season.named(entry)))
                && ofTwo.stream().allMatch(entry -> season.allows(one, season.named(entry)));
    }

    private static List<Integer> rest(PlainLists lists, int planter, int from) {
        List<Integer> rest = new ArrayList<>();
        while (lists.size(planter) > from) {
            rest.add(lists.remove(planter, from));
        }
        return rest;
    }
}

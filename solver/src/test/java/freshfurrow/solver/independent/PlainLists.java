package freshfurrow.solver.independent;

import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.schedule.FieldLists;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Entries of a season by planter, in their order, that may be changed; each field stands in one list at most. */
final class PlainLists {
    static final int NONE = -1;

    private final CompiledSeason season;
    private final int[][] entries;
    private final int[] sizes;
    private final int[] planterOf;

    PlainLists(CompiledSeason season) {
        this.season = season;
        entries = new int[season.planterCount()][season.fieldCount()];
        sizes = new int[season.planterCount()];
        planterOf = new int[season.fieldCount()];
        Arrays.fill(planterOf, NONE);
    }

    static PlainLists of(CompiledSeason season, FieldLists lists) {
        PlainLists made = new PlainLists(season);
        for (int planter = 0; planter < season.planterCount(); planter++) {
            for (int field : lists.of(planter)) {
                boolean without = lists.withoutExtract().contains(field);
                made.add(planter, made.sizes[planter], without ? season.without(field) : field);
            }
        }
        return made;
    }

    FieldLists fields() {
        return FieldLists.ofEntries(
                season,
                IntStream.range(0, sizes.length)
                        .mapToObj(planter -> Arrays.stream(entries[planter], 0, sizes[planter])
                                .boxed()
                                .toList())
                        .toList());
    }

    void copy(PlainLists other) {
        for (int planter = 0; planter < sizes.length; planter++) {
            System.arraycopy(other.entries[planter], 0, entries[planter], 0, other.sizes[planter]);
        }
        System.arraycopy(other.sizes, 0, sizes, 0, sizes.length);
        System.arraycopy(other.planterOf, 0, planterOf, 0, planterOf.length);
    }

    int[][] entries() {
        return entries;
    }

    int[] sizes() {
        return sizes;
    }

    int size(int planter) {
        return sizes[planter];
    }

    /** The planter in whose list a field stands, or {@link #NONE}. */
    int planterOf(int field) {
        return planterOf[field];
    }

    int entry(int planter, int index) {
        return entries[planter][index];
    }

    int field(int planter, int index) {
        return season.named(entries[planter][index]);
    }

    /** Index of a field in the list that it stands in. */
    int indexOf(int field) {
        int planter = planterOf[field];
        int index = 0;
        while (field(planter, index) != field) {
            index++;
        }
        return index;
    }

    List<Integer> leftOut() {
        return IntStream.range(0, planterOf.length)
                .filter(field -> planterOf[field] == NONE)
                .boxed()
                .toList();
    }

    void add(int planter, int index, int entry) {
        int[] list = entries[planter];
        System.arraycopy(list, index, list, index + 1, sizes[planter] - index);
        list[index] = entry;
        sizes[planter]++;
        planterOf[season.named(entry)] = planter;
    }

    /** Takes an entry out of a list. */
    int remove(int planter, int index) {
        int[] list = entries[planter];
        int entry = list[index];
        sizes[planter]--;
        System.arraycopy(list, index + 1, list, index, sizes[planter] - index);
        planterOf[season.named(entry)] = NONE;
        return entry;
    }

    void remove(int field) {
        remove(planterOf[field], indexOf(field));
    }
}

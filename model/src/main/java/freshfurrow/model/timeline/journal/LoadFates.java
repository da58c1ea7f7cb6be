package freshfurrow.model.timeline.journal;

import freshfurrow.model.plan.WaitReason;
import freshfurrow.model.timeline.calendar.Calendars;
import freshfurrow.model.timeline.state.Journal;
import freshfurrow.model.timeline.state.Shortfall;
import freshfurrow.model.timeline.state.WithoutReason;
import freshfurrow.model.timeline.tables.Leeway;
import freshfurrow.model.timeline.tables.SeasonTables;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Notes of each load for which ground it was and whether it got too old there, and of each field whether all of it was planted within its window. Ground
 * is counted along the planter's list: the area of all fields before, and what was planted of the field.
 */
public final class LoadFates implements Journal {
    private final SeasonTables tables;
    private final List<List<Fate>> byPlanter = new ArrayList<>();
    /** By planter, the load in its tank; null when there is none. */
    private final OpenLoad[] inTank;
    /** By field, the area of all fields before it in its list. */
    private final long[] before;
    /** By field. */
    private final long[] plantedDm2;

    private final boolean[] late;
    /** By planter, how far along its list it is. */
    private final long[] along;

    /** @param entries of each planter's list */
    public LoadFates(SeasonTables tables, int[][] entries) {
        this.tables = tables;
        int fields = tables.fields().count();
        before = new long[fields];
        plantedDm2 = new long[fields];
        late = new boolean[fields];
        inTank = new OpenLoad[entries.length];
        along = new long[entries.length];
        for (int[] list : entries) {
            byPlanter.add(new ArrayList<>());
            long sum = 0;
            for (int entry : list) {
                int field = tables.fields().named(entry);
                before[field] = sum;
                sum += tables.fields().areaDm2(field);
            }
        }
    }

    /**
     * What became of a load.
     *
     * @param fromDm2 where its ground begins, along the planter's list
     * @param toDm2 where it ends; of one that got too old, what that left over included
     * @param stale whether more of it than a hundred square metres' worth got too old
     */
    public record Fate(long fromDm2, long toDm2, boolean stale) {}

    private static final class OpenLoad {
        final int recipe;
        final long ml;
        final long fromDm2;
        long plantedDm2;
        boolean isBegun;
        long firstDm2;

        OpenLoad(int recipe, long ml, long fromDm2) {
            this.recipe = recipe;
            this.ml = ml;
            this.fromDm2 = fromDm2;
        }
    }

    /** Of a planter's loads, in their order; to be asked when the season is over. */
    public List<Fate> of(int planter) {
        close(planter);
        return byPlanter.get(planter);
    }

    /** Whether all of a field was planted, and none of it after its window. */
    public boolean isInWindow(int field) {
        return !late[field] && plantedDm2[field] >= tables.fields().areaDm2(field);
    }

    private void close(int planter) {
        OpenLoad load = inTank[planter];
        if (load == null) {
            return;
        }
        inTank[planter] = null;
        long spoiltMl = load.ml - tables.recipes().mixMl(load.plantedDm2, load.recipe);
        boolean stale = spoiltMl > tables.recipes().mixMl(Leeway.CRUMB_DM2, load.recipe);
        long from = load.isBegun ? load.firstDm2 : load.fromDm2;
        long spoiltDm2 = stale ? tables.recipes().areaOfMix(spoiltMl, load.recipe) : 0;
        long to = Math.max(along[planter], from) + spoiltDm2;
        byPlanter.get(planter).add(new Fate(from, to, stale));
    }

    @Override
    public void carried(int planter, int recipe, long ml, int deadline) {
        inTank[planter] = new OpenLoad(recipe, ml, along[planter]);
    }

    @Override
    public void filled(int planter, int rig, int recipe, int place, int start, int end, long ml, int deadline) {
        close(planter);
        inTank[planter] = new OpenLoad(recipe, ml, along[planter]);
    }

    @Override
    public void wasted(int planter, int rig, int recipe, int s, long ml, long dm2) {
        close(planter);
        byPlanter.get(planter).add(new Fate(along[planter], along[planter] + dm2, true));
    }

    @Override
    public void planted(int planter, int field, int start, int end, long dm2) {
        @Nullable OpenLoad load = inTank[planter];
        if (load != null) {
            if (!load.isBegun) {
                load.isBegun = true;
                load.firstDm2 = before[field] + plantedDm2[field];
            }
            load.plantedDm2 += dm2;
        }
        goOn(planter, field, start, dm2);
    }

    @Override
    public void plantedWithout(int planter, int field, int start, int end, long dm2) {
        close(planter);
        goOn(planter, field, start, dm2);
    }

    private void goOn(int planter, int field, int start, long dm2) {
        plantedDm2[field] += dm2;
        late[field] |= start / Calendars.DAY_S > tables.fields().lastDay(field);
        along[planter] = before[field] + plantedDm2[field];
    }

    @Override
    public void planterMoved(int planter, int from, int to, int start, int end) {
        // of no account
    }

    @Override
    public void waited(int planter, int place, int start, int end, WaitReason why) {
        // of no account
    }

    @Override
    public void goesWithout(int planter, WithoutReason why, int untilS, int rig, int waitS) {
        // of no account
    }

    @Override
    public void flushed(int planter, int place, int start, int end) {
        // of no account
    }

    @Override
    public void rigMoved(int rig, int from, int to, int start, int end) {
        // of no account
    }

    @Override
    public void drew(int rig, int point, int start, int end, long ml) {
        // of no account
    }

    @Override
    public void loadedCompost(int rig, int lot, int start, int end, long mg) {
        // of no account
    }

    @Override
    public void newMix(int rig) {
        // of no account
    }

    @Override
    public void extracted(int rig, int place, int start, int end, long compostMg, long waterMl) {
        // of no account
    }

    @Override
    public void cleaned(int rig, int place, int start, int end) {
        // of no account
    }

    @Override
    public void dumped(int rig, int place, int start, int end, long ml) {
        // of no account
    }

    @Override
    public void unserved(int field, long dm2, Shortfall why, int since) {
        // of no account
    }
}

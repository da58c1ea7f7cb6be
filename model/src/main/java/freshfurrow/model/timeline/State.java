package freshfurrow.model.timeline;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * All that changes while a timeline is played, in one flat array of whole numbers, so that it can be kept and put back with
 * one copy. Offsets are relative to the block of a planter, rig, water point or to {@link #counters}.
 */
final class State {
    // planter
    static final int PLACE = 0;
    static final int TIME = 1;
    static final int INDEX = 2;
    static final int LEFT_DM2 = 3;
    static final int FILL_DAY = 4;
    static final int NEED = 5;
    static final int FRESH = 6;
    static final int WAIT_FROM = 7;
    static final int AWAITS_COMPOST = 8;
    static final int POSTPONED = 9;
    /** What has happened so far depends on the planter's list before this index only; past its end, on all of it. */
    static final int LOOKED_TO = 10;

    static final int PLANTER_SIZE = 11;
    // rig
    static final int RIG_PLACE = 0;
    static final int FREE = 1;
    static final int WATER_ML = 2;
    static final int MIX_DM2 = 3;
    static final int MIX_RECIPE = 4;
    static final int MIX_DEADLINE = 5;
    /** 1 when it has to be cleaned before its next batch. */
    static final int CLEAN_DUE = 6;

    static final int RIG_SIZE = 7;
    // water point; then the litres drawn on each day, then the latest draws
    static final int LAST_END = 0;
    static final int FORGOTTEN_UNTIL = 1;
    static final int DRAWS = 2;
    static final int USED_ML = 3;
    static final int REMEMBERED_DRAWS = 16;
    // counters
    static final int FILLS = 0;
    static final int WATER_TRIPS = 1;
    static final int BATCHES = 2;
    static final int WAIT_S = 3;
    static final int DRIVE_S = 4;
    static final int DRIVE_M = 5;
    static final int DUMPED_MG = 6;
    static final int DUMPED_ML = 7;
    static final int COMPOST_MG = 8;
    static final int PLANTED_DM2 = 9;
    static final int UNSERVED_DM2 = 10;
    static final int LATE_DM2_DAYS = 11;
    static final int WEIGHTED_LATE_DM2_DAYS = 12;
    static final int EARLY_DM2_DAYS = 13;
    static final int SMALLEST_MARGIN_S = 14;
    static final int FINISH_S = 15;
    static final int MOVED_FIELDS = 16;
    static final int COUNTERS_SIZE = 17;

    final long[] v;
    final int counters;

    /** Told of all that happens; absent in the search. */
    @Nullable
    Journal journal;

    private final int planters;
    private final int rigs;
    private final int points;
    private final int pointSize;
    final int drawsOffset;
    final int lots;
    private final CompiledSeason season;

    State(CompiledSeason season) {
        this.season = season;
        drawsOffset = USED_ML + season.days;
        pointSize = drawsOffset + 2 * REMEMBERED_DRAWS;
        counters = 0;
        planters = COUNTERS_SIZE;
        rigs = planters + season.planterCount() * PLANTER_SIZE;
        lots = rigs + season.rigs.count() * RIG_SIZE;
        points = lots + season.compost.count();
        v = new long[points + season.water.count() * pointSize];
    }

    int planter(int p) {
        return planters + p * PLANTER_SIZE;
    }

    int rig(int r) {
        return rigs + r * RIG_SIZE;
    }

    int point(int w) {
        return points + w * pointSize;
    }

    void add(int counter, long amount) {
        v[counters + counter] += amount;
    }

    long get(int counter) {
        return v[counters + counter];
    }

    /** Where the season begins. What is in planters' tanks is not in the state: that is planted, or let out, first of all. */
    void reset() {
        Beginning beginning = season.beginning;
        Arrays.fill(v, 0);
        v[counters + SMALLEST_MARGIN_S] = Long.MAX_VALUE;
        for (int p = 0; p < season.planterCount(); p++) {
            v[planter(p) + PLACE] = beginning.planterPlace[p];
            v[planter(p) + TIME] = beginning.planterFreeS[p];
            v[planter(p) + FILL_DAY] = beginning.fillDay[p];
        }
        for (int r = 0; r < season.rigs.count(); r++) {
            int base = rig(r);
            v[base + RIG_PLACE] = beginning.rigPlace[r];
            v[base + FREE] = beginning.rigFreeS[r];
            v[base + WATER_ML] = beginning.waterMl[r];
            v[base + MIX_DM2] = beginning.mixDm2[r];
            v[base + MIX_RECIPE] = beginning.mixRecipe[r];
            v[base + MIX_DEADLINE] = beginning.mixDeadlineS[r];
            v[base + CLEAN_DUE] = beginning.cleanDue[r] ? 1 : 0;
        }
        for (int w = 0; w < season.water.count(); w++) {
            v[point(w) + USED_ML + season.beginsOnDay()] = beginning.drawnMl[w];
        }
        for (int lot = 0; lot < season.compost.count(); lot++) {
            v[lots + lot] = season.compost.mg(lot);
        }
    }
}

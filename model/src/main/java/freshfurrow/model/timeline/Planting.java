package freshfurrow.model.timeline;

import static freshfurrow.model.timeline.Calendar.NEVER;
import static freshfurrow.model.timeline.State.DRIVE_M;
import static freshfurrow.model.timeline.State.DRIVE_S;
import static freshfurrow.model.timeline.State.EARLY_DM2_DAYS;
import static freshfurrow.model.timeline.State.FINISH_S;
import static freshfurrow.model.timeline.State.INDEX;
import static freshfurrow.model.timeline.State.LATE_DM2_DAYS;
import static freshfurrow.model.timeline.State.LEFT_DM2;
import static freshfurrow.model.timeline.State.PLACE;
import static freshfurrow.model.timeline.State.PLANTED_DM2;
import static freshfurrow.model.timeline.State.WEIGHTED_LATE_DM2_DAYS;

/**
 * A planter's way through its list out of one load: pieces of fields, moves, nights and rain, until the load is used up or too
 * old. The same walk looks ahead to size a load and, done for real, plants it.
 */
final class Planting {
    private final CompiledSeason season;
    private final State state;
    private final long[] v;
    private int[][] lists;
    private int[] sizes;

    // where the walk stands
    int time;
    int place;
    int index;
    long leftDm2;

    Planting(CompiledSeason season, State state) {
        this.season = season;
        this.state = state;
        this.v = state.v;
    }

    void lists(int[][] fieldLists, int[] listSizes) {
        lists = fieldLists;
        sizes = listSizes;
    }

    int field(int planter, int i) {
        return lists[planter][i];
    }

    int size(int planter) {
        return sizes[planter];
    }

    /** Puts the walk where the planter is, with a load in its tank from {@code t} on. */
    void begin(int planter, int t) {
        int base = state.planter(planter);
        time = t;
        place = (int) v[base + PLACE];
        index = (int) v[base + INDEX];
        leftDm2 = v[base + LEFT_DM2];
    }

    /** Makes where the walk stands where the planter is. */
    void commit(int planter) {
        int base = state.planter(planter);
        v[base + PLACE] = place;
        v[base + INDEX] = index;
        v[base + LEFT_DM2] = leftDm2;
        v[base + State.TIME] = time;
    }

    /**
     * Plants up to {@code capDm2} of fields of the recipe before the deadline and returns the area planted.
     *
     * @param real false to look ahead only
     */
    long walk(int planter, int recipe, long capDm2, int deadline, boolean real) {
        int size = sizes[planter];
        int[] list = lists[planter];
        double capacity = season.capacityDm2PerS[planter];
        Calendar hours = season.planterHours[planter];
        long planted = 0;
        while (planted < capDm2 && index < size) {
            int field = list[index];
            if (season.recipeOf[field] != recipe) {
                break;
            }
            Calendar plantable = season.plantable[planter][field];
            if (place != field) {
                int duration = moveS(planter, place, field);
                int start = hours.earliest(time, duration);
                int begin = start == NEVER ? NEVER : plantable.next(Math.max(start + duration, season.openS[field]));
                if (begin >= deadline) {
                    break;
                }
                if (real) {
                    moved(planter, place, field, start, duration);
                }
                time = start + duration;
                place = field;
            }
            long done = plantField(planter, field, plantable, capacity, capDm2 - planted, deadline, real);
            planted += done;
            if (leftDm2 > 0) {
                break;
            }
            index++;
            leftDm2 = index < size ? season.areaDm2[list[index]] : 0;
        }
        return planted;
    }

    private long plantField(
            int planter, int field, Calendar plantable, double capacity, long capDm2, int deadline, boolean real) {
        long planted = 0;
        int t = Math.max(time, season.openS[field]);
        int period = plantable.periodAt(t);
        while (leftDm2 > 0 && planted < capDm2) {
            int start = Math.max(t, plantable.startOf(period));
            if (start >= deadline) {
                break;
            }
            int end = Math.min(plantable.endOf(period), deadline);
            end = Math.min(end, (start / Calendars.DAY_S + 1) * Calendars.DAY_S);
            long wanted = Math.min(leftDm2, capDm2 - planted);
            long piece = Math.min(wanted, (long) ((end - start) * capacity));
            if (piece > 0) {
                if (piece == wanted) {
                    end = Math.min(end, start + (int) Math.ceil(piece / capacity));
                }
                planted += piece;
                leftDm2 -= piece;
                time = end;
                if (real) {
                    planted(planter, field, start, end, piece);
                }
            }
            t = end;
            if (t >= plantable.endOf(period)) {
                period++;
            }
        }
        return planted;
    }

    /** Move time and drive from one place to a field, s. */
    int moveS(int planter, int from, int field) {
        return season.moveTimeS[planter] + driveS(planter, from, field);
    }

    void moved(int planter, int from, int to, int start, int duration) {
        state.add(DRIVE_S, driveS(planter, from, to));
        state.add(DRIVE_M, season.metres(from, to));
        if (state.journal != null) {
            state.journal.planterMoved(planter, from, to, start, start + duration);
        }
    }

    private int driveS(int planter, int from, int to) {
        return (int) Math.ceil(season.metres(from, to) * season.planterSPerM[planter]);
    }

    private void planted(int planter, int field, int start, int end, long dm2) {
        int day = start / Calendars.DAY_S;
        long late = dm2 * Math.max(0, day - season.lastDay[field]);
        state.add(PLANTED_DM2, dm2);
        state.add(EARLY_DM2_DAYS, dm2 * day);
        state.add(LATE_DM2_DAYS, late);
        state.add(WEIGHTED_LATE_DM2_DAYS, late * season.lateWeight[field]);
        v[state.counters + FINISH_S] = Math.max(v[state.counters + FINISH_S], end);
        if (state.journal != null) {
            state.journal.planted(planter, field, start, end, dm2);
        }
    }
}

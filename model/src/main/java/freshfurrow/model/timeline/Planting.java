package freshfurrow.model.timeline;

import static freshfurrow.model.timeline.Calendar.NEVER;
import static freshfurrow.model.timeline.State.DRIVE_M;
import static freshfurrow.model.timeline.State.DRIVE_S;
import static freshfurrow.model.timeline.State.EARLY_DM2_DAYS;
import static freshfurrow.model.timeline.State.FINISH_S;
import static freshfurrow.model.timeline.State.INDEX;
import static freshfurrow.model.timeline.State.LATE_DM2_DAYS;
import static freshfurrow.model.timeline.State.LEFT_DM2;
import static freshfurrow.model.timeline.State.LOOKED_TO;
import static freshfurrow.model.timeline.State.PLACE;
import static freshfurrow.model.timeline.State.PLANTED_DM2;
import static freshfurrow.model.timeline.State.WEIGHTED_LATE_DM2_DAYS;

import org.jspecify.annotations.Nullable;

/**
 * A planter's way through its list out of one load: pieces of fields, moves, nights and rain, until the load is used up or too
 * old. The same walk looks ahead to size a load and, done for real, plants it.
 */
final class Planting {
    private final CompiledSeason season;
    private final State state;
    private final long[] v;
    private final FieldOrder order;

    // where the walk stands
    int time;
    int place;
    int index;
    long leftDm2;

    private int walks;
    private int walkedFrom;
    private int walkedUntil;
    private long walkedDm2;

    // what the walk has brought so far
    private int driveS;
    private int driveM;
    private long plantedDm2;
    private long earlyDm2Days;
    private long lateDm2Days;
    private long weightedLateDm2Days;
    private int finishS;
    private int movedFields;

    /** Told of a walk that is done for real. */
    @Nullable
    private Journal journal;

    Planting(CompiledSeason season, State state, FieldOrder order) {
        this.season = season;
        this.state = state;
        this.v = state.v;
        this.order = order;
    }

    int field(int planter, int i) {
        return order.field(planter, i);
    }

    int size(int planter) {
        return order.size(planter);
    }

    /** Puts the walk where the planter is, with a load in its tank from {@code t} on. */
    void begin(int planter, int t) {
        int base = state.planter(planter);
        time = t;
        place = (int) v[base + PLACE];
        index = (int) v[base + INDEX];
        leftDm2 = v[base + LEFT_DM2];
        walks = 0;
        walkedFrom = t;
        driveS = 0;
        driveM = 0;
        plantedDm2 = 0;
        earlyDm2Days = 0;
        lateDm2Days = 0;
        weightedLateDm2Days = 0;
        finishS = 0;
        movedFields = 0;
    }

    /** Looks no further back on the last look ahead: another request is served. */
    void forget() {
        walks = 0;
    }

    /** Plants out of a load that is in the tank from {@code t} on for real, and returns the area planted. */
    long plant(int planter, int t, int recipe, long loadDm2, int deadline) {
        boolean justWalked = walks == 1 && walkedFrom == t && walkedUntil == deadline && walkedDm2 == loadDm2;
        if (!justWalked || state.journal != null) {
            journal = state.journal;
            begin(planter, t);
            walk(planter, recipe, loadDm2, deadline);
            journal = null;
        }
        int base = state.planter(planter);
        v[base + PLACE] = place;
        v[base + INDEX] = index;
        v[base + LEFT_DM2] = leftDm2;
        v[base + State.TIME] = time;
        state.add(DRIVE_S, driveS);
        state.add(DRIVE_M, driveM);
        state.add(State.MOVED_FIELDS, movedFields);
        state.add(PLANTED_DM2, plantedDm2);
        state.add(EARLY_DM2_DAYS, earlyDm2Days);
        state.add(LATE_DM2_DAYS, lateDm2Days);
        state.add(WEIGHTED_LATE_DM2_DAYS, weightedLateDm2Days);
        v[state.counters + FINISH_S] = Math.max(v[state.counters + FINISH_S], finishS);
        return plantedDm2;
    }

    /** Plants what is in a planter's tank to begin with; what would be too old, or is of no use, is let out. */
    void plantTank(int planter) {
        Beginning tank = season.beginning;
        int recipe = tank.tankRecipe[planter];
        long dm2 = tank.tankDm2[planter];
        int deadline = tank.tankDeadlineS[planter];
        if (state.journal != null) {
            state.journal.carried(planter, recipe, season.recipes.mixMl(dm2, recipe), deadline);
        }
        forget();
        long applied = plant(planter, tank.planterFreeS[planter], recipe, dm2, deadline);
        if (applied < dm2) {
            state.add(State.DUMPED_ML, season.recipes.mixMl(dm2, recipe) - season.recipes.mixMl(applied, recipe));
            state.add(State.DUMPED_MG, season.recipes.compostMg(dm2 - applied, recipe));
        }
        if (applied > 0) {
            int margin = state.counters + State.SMALLEST_MARGIN_S;
            v[margin] = Math.min(v[margin], season.clock.between(time, deadline));
        }
    }

    /** Plants in thought up to {@code capDm2} of fields of the recipe before the deadline and returns the area planted. */
    long walk(int planter, int recipe, long capDm2, int deadline) {
        walks++;
        walkedUntil = deadline;
        walkedDm2 = capDm2;
        int size = order.size(planter);
        int[] list = order.list(planter);
        double capacity = season.planters.capacityDm2PerS(planter);
        Calendar hours = season.planters.hours(planter);
        long planted = 0;
        while (planted < capDm2 && index < size) {
            int field = list[index];
            if (season.fields.recipe(field) != recipe) {
                break;
            }
            Calendar plantable = season.planters.plantable(planter, field);
            if (place != field) {
                int duration = moveS(planter, place, field);
                int start = hours.earliest(time, duration);
                int begin =
                        start == NEVER ? NEVER : plantable.next(Math.max(start + duration, season.fields.openS(field)));
                if (begin >= deadline) {
                    break;
                }
                driveS += driveS(planter, place, field);
                driveM += season.places.metres(place, field);
                if (journal != null) {
                    journal.planterMoved(planter, place, field, start, start + duration);
                }
                time = start + duration;
                place = field;
            }
            long done = plantField(planter, field, plantable, capacity, capDm2 - planted, deadline);
            planted += done;
            if (leftDm2 > 0) {
                break;
            }
            index++;
            leftDm2 = index < size ? season.fields.areaDm2(list[index]) : 0;
        }
        lookedAt(planter, index);
        return planted;
    }

    private long plantField(int planter, int field, Calendar plantable, double capacity, long capDm2, int deadline) {
        long planted = 0;
        int t = Math.max(time, season.fields.openS(field));
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
                if (leftDm2 == season.fields.areaDm2(field) && season.promised.isBrokenBy(planter, field, start)) {
                    movedFields++;
                }
                if (piece == wanted) {
                    end = Math.min(end, start + (int) Math.ceil(piece / capacity));
                }
                planted += piece;
                leftDm2 -= piece;
                time = end;
                tally(planter, field, start, end, piece);
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
        return season.planters.moveS(planter, season.places.metres(from, field));
    }

    void moved(int planter, int from, int to, int start, int duration) {
        state.add(DRIVE_S, driveS(planter, from, to));
        state.add(DRIVE_M, season.places.metres(from, to));
        if (state.journal != null) {
            state.journal.planterMoved(planter, from, to, start, start + duration);
        }
    }

    /** What comes after depends on the planter's list as far as index {@code i}. */
    void lookedAt(int planter, int i) {
        int slot = state.planter(planter) + LOOKED_TO;
        v[slot] = Math.max(v[slot], i + 1);
    }

    private int driveS(int planter, int from, int to) {
        return season.planters.driveS(planter, season.places.metres(from, to));
    }

    private void tally(int planter, int field, int start, int end, long dm2) {
        int day = start / Calendars.DAY_S;
        long late = dm2 * Math.max(0, day - season.fields.lastDay(field));
        plantedDm2 += dm2;
        earlyDm2Days += dm2 * day;
        lateDm2Days += late;
        weightedLateDm2Days += late * season.fields.lateWeight(field);
        finishS = end;
        if (journal != null) {
            journal.planted(planter, field, start, end, dm2);
        }
    }
}

package freshfurrow.model.timeline.rigs;

import static freshfurrow.model.timeline.calendar.Calendar.NEVER;

import freshfurrow.model.timeline.actual.ActualTimes;
import freshfurrow.model.timeline.calendar.Calendar;
import freshfurrow.model.timeline.state.State;
import freshfurrow.model.timeline.tables.RigTable;

/**
 * When a rig begins and ends a piece of work. Where all goes as planned that is when it was planned. Where times turn out otherwise it begins then or, if
 * it is late or down, as soon as it can where by plan it fits its hours; what is begun is finished.
 */
final class RigClock {
    private final RigTable rigs;
    private final State state;
    private final WaterPoints points;

    RigClock(RigTable rigs, State state, WaterPoints points) {
        this.rigs = rigs;
        this.state = state;
        this.points = points;
    }

    boolean isAsPlanned() {
        return state.actual() == null;
    }

    /**
     * When it begins work that was planned for a time.
     *
     * @param free when it is done with what comes before, s
     * @param plannedS how long the work takes by plan, s
     */
    int begins(int rig, int planned, int free, int plannedS) {
        ActualTimes actual = state.actual();
        if (actual == null) {
            return planned;
        }
        int s = free >= planned ? inHours(rig, free, plannedS) : planned;
        int up = actual.rigUpFrom(rig, s);
        while (up > s) {
            s = inHours(rig, up, plannedS);
            up = actual.rigUpFrom(rig, s);
        }
        return s;
    }

    /** The same of a draw, which has to find a hose free and the day's limit not reached if it is late. */
    int beginsDraw(int rig, WaterTrip trip, int free) {
        int planned = trip.drawStart();
        int s = begins(rig, planned, free, trip.drawS());
        if (s == planned) {
            return planned;
        }
        int found = points.earliestDraw(trip.point(), s, trip.drawMl(), trip.drawMl(), rigs.hours(rig));
        return found < NEVER ? found : s;
    }

    /** What is still to be done when there are no more hours in the season is done at once. */
    private int inHours(int rig, int from, int plannedS) {
        Calendar hours = rigs.hours(rig);
        int s = hours.earliest(from, plannedS);
        return s < NEVER ? s : from;
    }

    int batchEnd(int rig, int s, int plannedS) {
        ActualTimes actual = state.actual();
        return actual == null ? s + plannedS : actual.batchEnd(rig, s, plannedS);
    }

    int driveEnd(int rig, int s, int plannedS) {
        ActualTimes actual = state.actual();
        return actual == null ? s + plannedS : actual.rigDriveEnd(rig, s, plannedS);
    }

    int transferEnd(int rig, int s, int plannedS) {
        ActualTimes actual = state.actual();
        return actual == null ? s + plannedS : actual.transferEnd(rig, s, plannedS);
    }

    /** Of work whose time does not vary. */
    int end(int rig, int s, int plannedS) {
        ActualTimes actual = state.actual();
        return actual == null ? s + plannedS : actual.rigWorkEnd(rig, s, plannedS);
    }
}

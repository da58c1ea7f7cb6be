package freshfurrow.model.timeline.rigs;

import static freshfurrow.model.timeline.calendar.Calendar.NEVER;

import freshfurrow.model.timeline.calendar.Calendar;
import freshfurrow.model.timeline.tables.PlaceTable;
import freshfurrow.model.timeline.tables.RigTable;
import freshfurrow.model.timeline.tables.SeasonTables;
import freshfurrow.model.timeline.tables.WaterTable;

/** By which water point a rig goes to a planter. */
final class WaterTrips {
    private final PlaceTable places;
    private final WaterTable water;
    private final RigTable rigs;
    private final RigTimes times;
    private final WaterPoints points;

    WaterTrips(SeasonTables tables, RigTimes times, WaterPoints points) {
        this.places = tables.places();
        this.water = tables.water();
        this.rigs = tables.rigs();
        this.times = times;
        this.points = points;
    }

    /**
     * The point that has the water at the planter earliest; ties go to the shorter way, then to the season's order. No trip is made when
     * no point gives it in the season.
     *
     * @param t when the rig may set off, s
     * @param lackMl at least so much is drawn
     * @param roomMl at most so much
     */
    void find(WaterTrip trip, int rig, int from, int place, int t, long lackMl, long roomMl) {
        Calendar hours = rigs.hours(rig);
        int best = NEVER;
        int bestWay = 0;
        trip.none();
        for (int w = 0; w < water.count(); w++) {
            if (!trip.mayBeBy(w)) {
                continue;
            }
            int at = water.place(w);
            int to = places.metres(from, at);
            int on = places.metres(at, place);
            int arrival = from == at ? t : times.arrivalAfter(rig, rigs.driveS(rig, to), at, t);
            int onward = rigs.driveS(rig, on);
            if (arrival + water.leastDrawS(w, lackMl) + onward > best) {
                continue;
            }
            int start = points.earliestDraw(w, arrival, lackMl, roomMl, hours);
            if (start >= NEVER) {
                continue;
            }
            long ml = points.drawMl(w, start, roomMl);
            int drawS = water.drawS(w, ml);
            int there = at == place ? start + drawS : times.arrivalAfter(rig, onward, place, start + drawS);
            int way = to + on;
            if (there < best || (there == best && there < NEVER && way < bestWay)) {
                best = there;
                bestWay = way;
                trip.to(w, start, drawS, ml);
                trip.by(at, onward, way, start > arrival);
            }
        }
    }
}

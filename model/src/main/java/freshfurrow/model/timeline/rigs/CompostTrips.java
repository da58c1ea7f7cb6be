package freshfurrow.model.timeline.rigs;

import static freshfurrow.model.quantity.Factors.MG_PER_G;
import static freshfurrow.model.timeline.calendar.Calendar.NEVER;

import freshfurrow.model.timeline.state.CompostLots;
import freshfurrow.model.timeline.tables.CompostTable;
import freshfurrow.model.timeline.tables.PlaceTable;
import freshfurrow.model.timeline.tables.RigTable;
import freshfurrow.model.timeline.tables.SeasonTables;

/** Where a rig fetches how much compost: of the lots in their order, as much as it holds, and no more than its share of what lies there and of what all fields need. */
final class CompostTrips {
    private final CompostTable compost;
    private final PlaceTable places;
    private final RigTable rigs;
    private final CompostLots lots;
    private final RigTimes times;

    CompostTrips(SeasonTables tables, CompostLots lots, RigTimes times) {
        this.compost = tables.compost();
        this.places = tables.places();
        this.rigs = tables.rigs();
        this.lots = lots;
        this.times = times;
    }

    /**
     * Lays a trip from where a rig is. It goes on to another lot's place only where it has not what it lacks, and does not wait for a lot
     * that is still to come where it has compost.
     *
     * @param t when it may set off, s
     * @param lackMg without so much more there is not enough for the load
     * @param littleMg so little on board is not worth a load without what it lacks
     * @return where it ends
     */
    int find(CompostTrip trip, int rig, int from, int t, long lackMg, long littleMg) {
        trip.none(t);
        long onBoardMg = lots.onBoardMg(rig);
        long lacksMg = wholeGrams(lackMg + MG_PER_G - 1);
        long fairMg = Math.min(lots.wantedMg(rig), lots.shareMg(rig, Math.max(t, lots.loadableFromS())));
        long wantedMg = wholeGrams(Math.min(rigs.mostCompostMg(rig) - onBoardMg, Math.max(lacksMg, fairMg)));
        int place = from;
        for (int lot = 0; lot < compost.count() && trip.mg() < wantedMg; lot++) {
            long mg = Math.min(wantedMg - trip.mg(), lots.inLotMg(lot));
            int at = compost.place(lot);
            if (mg == 0) {
                continue;
            }
            if (trip.isMade() && trip.mg() >= lacksMg && at != place) {
                break;
            }
            int arrival = times.arrival(rig, place, at, trip.leavesS());
            boolean mayWait = !trip.isMade() && onBoardMg <= littleMg;
            if (arrival >= NEVER || (compost.fromS(lot) > arrival && !mayWait)) {
                break;
            }
            int loadingS = rigs.loadingS(rig, mg);
            int start = rigs.hours(rig).earliest(Math.max(arrival, compost.fromS(lot)), loadingS);
            if (start >= NEVER) {
                break;
            }
            trip.add(lot, start, start + loadingS, mg, times.driveS(rig, place, at), places.metres(place, at));
            place = at;
        }
        return place;
    }

    /** The place of the first lot that has some; empty lots are passed by. Another place where none has. */
    int firstPlace(int otherwise) {
        for (int lot = 0; lot < compost.count(); lot++) {
            if (lots.inLotMg(lot) > 0) {
                return compost.place(lot);
            }
        }
        return otherwise;
    }

    private static long wholeGrams(long mg) {
        return mg / MG_PER_G * MG_PER_G;
    }
}

package freshfurrow.model.timeline.rigs;

import static freshfurrow.model.timeline.calendar.Calendar.NEVER;

import freshfurrow.model.timeline.calendar.Calendar;
import freshfurrow.model.timeline.planters.LoadRequest;
import freshfurrow.model.timeline.state.CompostLots;
import freshfurrow.model.timeline.state.RigStates;
import freshfurrow.model.timeline.state.State;
import freshfurrow.model.timeline.tables.PlaceTable;
import freshfurrow.model.timeline.tables.RigTable;
import freshfurrow.model.timeline.tables.SeasonTables;

/**
 * What a rig lets out, fetches and makes before a transfer, and when that lets the transfer start. It is worked out only: {@link
 * RigWork} does it for real.
 */
public final class Preparation {
    private final LoadRequest request;
    private final RigTable rigs;
    private final PlaceTable places;
    private final RigStates states;
    private final CompostLots lots;
    private final RigTimes times;
    private final WaterTrips trips;

    public Preparation(SeasonTables tables, State state, LoadRequest request, RigTimes times, WaterPoints points) {
        this.request = request;
        this.rigs = tables.rigs();
        this.places = tables.places();
        this.states = state.rigs();
        this.lots = state.lots();
        this.times = times;
        this.trips = new WaterTrips(tables, times, points);
    }

    /** A delivery that can set off as soon as the rig is free, and is not in the season yet. */
    public void begin(Delivery delivery) {
        delivery.transferS = times.transferS(request.planter(), delivery.rig(), request.recipe(), delivery.loadDm2);
        delivery.trip.none();
        delivery.acrossBreak = false;
        delivery.heldDownByAge = false;
        delivery.dumpEnd = Math.max(states.freeS(delivery.rig()), delivery.notBefore);
        delivery.metres = 0;
        delivery.transferStart = NEVER;
        delivery.useBy = 0;
        delivery.plantBy = 0;
    }

    /** Lets out what mix is on board. */
    public void letOut(Delivery delivery) {
        int rig = delivery.rig();
        if (states.mixDm2(rig) > 0) {
            int dumpS = times.dumpS(rig);
            delivery.dumpEnd = rigs.hours(rig).earliest(delivery.dumpEnd, dumpS) + dumpS;
        }
    }

    /** When the rig is at the planter by the shortest way, s. */
    public int there(Delivery delivery) {
        int from = states.place(delivery.rig());
        delivery.metres = places.metres(from, request.place());
        return times.arrival(delivery.rig(), from, request.place(), delivery.dumpEnd);
    }

    /** When the rig is at the planter with water: at least {@code lackMl} more, up to {@code roomMl}; never when nothing gives it, s. */
    public int thereWithWater(Delivery delivery, long lackMl, long roomMl) {
        if (lackMl <= 0) {
            return there(delivery);
        }
        int drawn = drawn(delivery, lackMl, roomMl);
        return drawn >= NEVER
                ? NEVER
                : times.arrivalAfter(delivery.rig(), delivery.trip.onwardS(), request.place(), drawn);
    }

    /** When such a draw is done; never when nothing gives it, s. */
    public int drawn(Delivery delivery, long lackMl, long roomMl) {
        int rig = delivery.rig();
        WaterTrip trip = delivery.trip;
        trips.find(trip, rig, states.place(rig), request.place(), delivery.dumpEnd, lackMl, roomMl);
        if (!trip.isMade()) {
            return NEVER;
        }
        delivery.metres = trip.metres();
        return trip.drawEnd();
    }

    /**
     * The batches are made, and the mix is brought, before the transfer.
     *
     * @param ready when the first batch could be made but for compost and a clean, s
     * @param carryS from where they are made to the planter, s
     */
    public void extract(Delivery delivery, int ready, int carryS) {
        int rig = delivery.rig();
        Calendar hours = rigs.hours(rig);
        int start = Math.max(ready, lots.availableFrom());
        if (start >= NEVER) {
            return;
        }
        delivery.carryS = carryS;
        if (states.isCleanDue(rig)) {
            start = hours.earliest(start, rigs.cleanS(rig)) + rigs.cleanS(rig);
        }
        int made = delivery.extraction.forward(start);
        transfer(delivery, carryS == 0 ? made : times.arrivalAfter(rig, carryS, request.place(), made));
    }

    /** The transfer starts once rig and mix are there and the planter asks for it. */
    public void transfer(Delivery delivery, int ready) {
        delivery.rigReady = ready;
        fitTransfer(delivery, Math.max(request.needS(), ready));
    }

    private void fitTransfer(Delivery delivery, int t) {
        delivery.transferStart = times.fitTransfer(request.planter(), delivery.rig(), t, delivery.transferS);
    }

    /**
     * Lays the batches before the transfer, as late as may be.
     *
     * @param together make all batches after a break rather than some before it
     * @return whether the transfer is in the season still
     */
    public boolean lay(Delivery delivery, boolean together) {
        Calendar hours = rigs.hours(delivery.rig());
        layBatches(delivery, hours);
        if (together && delivery.acrossBreak) {
            int whole = hours.startBefore(delivery.transferStart) + delivery.extraction.chainS() + delivery.carryS;
            if (whole > delivery.transferStart) {
                delivery.rigReady = whole;
                fitTransfer(delivery, whole);
                if (!delivery.isInSeason()) {
                    return false;
                }
                layBatches(delivery, hours);
            }
        }
        return true;
    }

    private void layBatches(Delivery delivery, Calendar hours) {
        Extraction extraction = delivery.extraction;
        int start = delivery.transferStart;
        int carryS = delivery.carryS;
        delivery.depart =
                carryS == 0 ? start : times.latestArrival(delivery.rig(), carryS, request.place(), start) - carryS;
        extraction.backward(delivery.depart, null);
        long thereMg = lots.available(extraction.start);
        if (extraction.compostMg > thereMg && CompostLots.isEnough(thereMg, extraction.compostMg)) {
            extraction.plan(delivery.rig(), thereMg);
            extraction.backward(delivery.depart, null);
        }
        delivery.acrossBreak = extraction.start < hours.startBefore(start);
    }
}

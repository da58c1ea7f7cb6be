package freshfurrow.model.timeline.rigs;

import static freshfurrow.model.timeline.calendar.Calendar.NEVER;

import freshfurrow.model.timeline.calendar.Calendar;
import freshfurrow.model.timeline.planters.LoadRequest;
import freshfurrow.model.timeline.state.CompostLots;
import freshfurrow.model.timeline.state.RigStates;
import freshfurrow.model.timeline.state.State;
import freshfurrow.model.timeline.tables.Leeway;
import freshfurrow.model.timeline.tables.PlaceTable;
import freshfurrow.model.timeline.tables.RecipeTable;
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
    private final RecipeTable recipes;
    private final WaterTrips trips;
    private final CompostTrips compostTrips;

    public Preparation(SeasonTables tables, State state, LoadRequest request, RigTimes times, WaterPoints points) {
        this.request = request;
        this.rigs = tables.rigs();
        this.places = tables.places();
        this.states = state.rigs();
        this.lots = state.lots();
        this.times = times;
        this.recipes = tables.recipes();
        this.trips = new WaterTrips(tables, times, points);
        this.compostTrips = new CompostTrips(tables, lots, times);
    }

    /** A delivery that can set off as soon as the rig is free, and is not in the season yet. */
    public void begin(Delivery delivery) {
        delivery.transferS = times.transferS(request.planter(), delivery.rig(), request.recipe(), delivery.loadDm2);
        delivery.trip.none();
        delivery.compost.none(0);
        delivery.fetchS = 0;
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
        delivery.fetchS = rigs.driveS(delivery.rig(), delivery.metres);
        return times.arrival(delivery.rig(), from, request.place(), delivery.dumpEnd);
    }

    /**
     * When the rig is at the planter with the compost of the extraction and with water, at least {@code lackMl} more, up to {@code roomMl}; never
     * when nothing gives it, s. Where it fetches both, it does so in the order in which it is there sooner; ties go to the shorter way, then to
     * compost first.
     */
    public int thereWithAll(Delivery delivery, long lackMl, long roomMl) {
        long lackMg = lots.lackMg(delivery.rig(), delivery.extraction.compostMg);
        if (lackMg <= 0) {
            return lackMl <= 0 ? there(delivery) : thereAfter(delivery, drawn(delivery, lackMl, roomMl));
        }
        int compostFirst = thereWithCompostFirst(delivery, lackMg, lackMl, roomMl);
        if (lackMl <= 0) {
            return compostFirst;
        }
        int metres = delivery.metres;
        int waterFirst = thereWithWaterFirst(delivery, lackMg, lackMl, roomMl);
        return waterFirst < compostFirst || (waterFirst == compostFirst && delivery.metres < metres)
                ? waterFirst
                : thereWithCompostFirst(delivery, lackMg, lackMl, roomMl);
    }

    /** When such a draw is done by a rig that has the compost of the extraction; never when nothing gives it, s. */
    public int drawnWithCompost(Delivery delivery, long lackMl, long roomMl) {
        long lackMg = lots.lackMg(delivery.rig(), delivery.extraction.compostMg);
        return lackMg <= 0
                ? drawn(delivery, lackMl, roomMl)
                : drawnAfterCompost(
                        delivery,
                        fetched(delivery, states.place(delivery.rig()), delivery.dumpEnd, lackMg),
                        lackMl,
                        roomMl);
    }

    private int drawn(Delivery delivery, long lackMl, long roomMl) {
        int rig = delivery.rig();
        WaterTrip trip = delivery.trip;
        trips.find(trip, rig, states.place(rig), request.place(), delivery.dumpEnd, lackMl, roomMl);
        if (!trip.isMade()) {
            return NEVER;
        }
        delivery.metres = trip.metres();
        delivery.fetchS = times.driveS(rig, states.place(rig), trip.at()) + trip.drawS() + trip.onwardS();
        return trip.drawEnd();
    }

    private int thereAfter(Delivery delivery, int drawEnd) {
        return drawEnd >= NEVER
                ? NEVER
                : times.arrivalAfter(delivery.rig(), delivery.trip.onwardS(), request.place(), drawEnd);
    }

    /** Lays the compost trip. Returns the place where it ends; a rig with nothing on board then makes no load. */
    private int fetched(Delivery delivery, int from, int t, long lackMg) {
        long littleMg = recipes.compostMg(Leeway.CRUMB_DM2, request.recipe());
        return compostTrips.find(delivery.compost, delivery.rig(), from, t, lackMg, littleMg);
    }

    private boolean hasNone(Delivery delivery) {
        return lots.onBoardMg(delivery.rig()) + delivery.compost.mg() <= CompostLots.LEAST_MG;
    }

    private int thereWithCompostFirst(Delivery delivery, long lackMg, long lackMl, long roomMl) {
        int rig = delivery.rig();
        delivery.trip.none();
        int last = fetched(delivery, states.place(rig), delivery.dumpEnd, lackMg);
        if (lackMl > 0) {
            return thereAfter(delivery, drawnAfterCompost(delivery, last, lackMl, roomMl));
        }
        if (hasNone(delivery)) {
            return NEVER;
        }
        CompostTrip compost = delivery.compost;
        int metres = places.metres(last, request.place());
        delivery.metres = compost.metres() + metres;
        delivery.fetchS = compost.inOnePieceS() + rigs.driveS(rig, metres);
        return times.arrival(rig, last, request.place(), compost.leavesS());
    }

    /** @param last where the compost trip ends */
    private int drawnAfterCompost(Delivery delivery, int last, long lackMl, long roomMl) {
        int rig = delivery.rig();
        CompostTrip compost = delivery.compost;
        WaterTrip trip = delivery.trip;
        trips.find(trip, rig, last, request.place(), compost.leavesS(), lackMl, roomMl);
        if (!trip.isMade() || hasNone(delivery)) {
            return NEVER;
        }
        delivery.metres = compost.metres() + trip.metres();
        delivery.fetchS = compost.inOnePieceS() + times.driveS(rig, last, trip.at()) + trip.drawS() + trip.onwardS();
        return trip.drawEnd();
    }

    private int thereWithWaterFirst(Delivery delivery, long lackMg, long lackMl, long roomMl) {
        int rig = delivery.rig();
        int from = states.place(rig);
        WaterTrip trip = delivery.trip;
        CompostTrip compost = delivery.compost;
        int to = compostTrips.firstPlace(request.place());
        trips.find(trip, rig, from, to, delivery.dumpEnd, lackMl, roomMl);
        if (!trip.isMade()) {
            return NEVER;
        }
        int last = fetched(delivery, trip.at(), trip.drawEnd(), lackMg);
        compost.afterWater(compost.isMade());
        if (hasNone(delivery)) {
            return NEVER;
        }
        int onward = places.metres(last, request.place());
        delivery.metres = places.metres(from, trip.at()) + compost.metres() + onward;
        delivery.fetchS =
                times.driveS(rig, from, trip.at()) + trip.drawS() + compost.inOnePieceS() + rigs.driveS(rig, onward);
        return times.arrival(rig, last, request.place(), compost.leavesS());
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
        int start = lots.areFetched() ? ready : Math.max(ready, lots.availableFrom());
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
        long thereMg = lots.thereMg(delivery.rig(), extraction.start, delivery.compost.mg());
        if (extraction.compostMg > thereMg && CompostLots.isEnough(thereMg, extraction.compostMg)) {
            extraction.plan(delivery.rig(), thereMg);
            extraction.backward(delivery.depart, null);
        }
        delivery.acrossBreak = extraction.start < hours.startBefore(start);
    }
}

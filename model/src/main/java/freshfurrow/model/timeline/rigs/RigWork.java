package freshfurrow.model.timeline.rigs;

import static freshfurrow.model.timeline.calendar.Calendar.NEVER;
import static freshfurrow.model.timeline.state.Tally.BATCHES;
import static freshfurrow.model.timeline.state.Tally.CALL_OUTS;
import static freshfurrow.model.timeline.state.Tally.COMPOST_MG;
import static freshfurrow.model.timeline.state.Tally.COMPOST_TRIPS;
import static freshfurrow.model.timeline.state.Tally.DRAWN_ML;
import static freshfurrow.model.timeline.state.Tally.DRIVE_M;
import static freshfurrow.model.timeline.state.Tally.DRIVE_S;
import static freshfurrow.model.timeline.state.Tally.DUMPED_MG;
import static freshfurrow.model.timeline.state.Tally.DUMPED_ML;
import static freshfurrow.model.timeline.state.Tally.WATER_TRIPS;

import freshfurrow.model.timeline.calendar.Calendar;
import freshfurrow.model.timeline.calendar.Calendars;
import freshfurrow.model.timeline.planters.LoadRequest;
import freshfurrow.model.timeline.state.RigStates;
import freshfurrow.model.timeline.state.State;
import freshfurrow.model.timeline.state.Tally;
import freshfurrow.model.timeline.tables.SeasonTables;

/** Does for real what a {@link Delivery} has worked out: driving, drawing, extracting, transferring, cleaning, dumping. */
public final class RigWork {
    private final SeasonTables tables;
    private final LoadRequest request;
    private final State state;
    private final Tally tally;
    private final RigStates states;
    private final RigTimes times;
    private final Preparation preparation;
    private final RigClock clock;
    private int[] batchStarts = {};

    public RigWork(
            SeasonTables tables,
            LoadRequest request,
            State state,
            RigTimes times,
            Preparation preparation,
            WaterPoints points) {
        this.tables = tables;
        this.request = request;
        this.state = state;
        this.tally = state.tally();
        this.states = state.rigs();
        this.times = times;
        this.preparation = preparation;
        this.clock = new RigClock(tables.rigs(), state, points);
    }

    /** Lets out what mix is on board before a delivery. */
    public void letOut(Delivery delivery) {
        int rig = delivery.rig();
        if (states.mixDm2(rig) > 0) {
            int dumpS = times.dumpS(rig);
            int start = clock.begins(rig, delivery.dumpEnd - dumpS, states.freeS(rig), dumpS);
            delivery.dumpEnd = clock.end(rig, start, dumpS);
            dump(rig, start, delivery.dumpEnd);
        }
    }

    /** What is extracted from here on does not mix with what was before. */
    public void newMix(Delivery delivery) {
        if (state.isTold()) {
            state.journal().newMix(delivery.rig());
        }
    }

    /** Draws water if need be, drives to the planter, and makes the batches there that are still to be made. */
    public void makeBesidePlanter(Delivery delivery) {
        int rig = delivery.rig();
        int recipe = request.recipe();
        WaterTrip trip = delivery.trip;
        driveToPlanter(delivery, fetch(delivery));
        extract(delivery, request.place());
        long begunMl = tables.recipes().mixMl(states.mixDm2(rig), recipe);
        long usedMl = Math.max(0, tables.recipes().mixMl(delivery.loadDm2, recipe) - begunMl);
        long drawnMl = trip.isMade() ? trip.drawMl() : 0;
        states.water(rig, Math.max(0, states.waterMl(rig) + drawnMl - usedMl));
    }

    /** Draws water and makes all batches there. */
    public void makeAtWater(Delivery delivery) {
        int rig = delivery.rig();
        delivery.there = fetch(delivery);
        extract(delivery, states.place(rig));
    }

    /** Drives to the planter with mix that was made at the water, if there was time for that. */
    public void carry(Delivery delivery) {
        if (!delivery.isInSeason()) {
            return;
        }
        int rig = delivery.rig();
        int driveS = times.driveS(rig, states.place(rig), request.place());
        int arrival = clock.isAsPlanned() || delivery.there <= delivery.depart
                ? delivery.depart + driveS
                : times.arrival(rig, states.place(rig), request.place(), delivery.there);
        delivery.there = drive(rig, request.place(), arrival, delivery.there);
        states.mix(rig, delivery.mixDm2, request.recipe(), delivery.useBy, delivery.plantBy);
    }

    /** Sets off for the planter at {@code t} or as soon after as its hours allow. */
    public void driveToPlanter(Delivery delivery, int t) {
        int rig = delivery.rig();
        int arrival = times.arrival(rig, states.place(rig), request.place(), t);
        delivery.there = drive(rig, request.place(), arrival, t);
    }

    /** Fetches what water and compost the delivery lacks. Returns when that is done, s. */
    private int fetch(Delivery delivery) {
        int rig = delivery.rig();
        CompostTrip compost = delivery.compost;
        int t = delivery.dumpEnd;
        if (!compost.isAfterWater()) {
            t = load(rig, compost, t);
        }
        if (delivery.trip.isMade()) {
            t = draw(delivery, t);
        }
        return compost.isAfterWater() ? load(rig, compost, t) : t;
    }

    private int load(int rig, CompostTrip compost, int from) {
        int t = from;
        for (int loading = 0; loading < compost.loadings(); loading++) {
            int lot = compost.lot(loading);
            int at = tables.compost().place(lot);
            int there = drive(rig, at, times.arrival(rig, states.place(rig), at, t), t);
            int loadingS = compost.end(loading) - compost.start(loading);
            int start = clock.begins(rig, compost.start(loading), there, loadingS);
            t = clock.end(rig, start, loadingS);
            state.lots().load(rig, lot, compost.mg(loading));
            state.hours().rigWorked(rig, start, t);
            tally.add(COMPOST_TRIPS, 1);
            if (state.isTold()) {
                state.journal().loadedCompost(rig, lot, start, t, compost.mg(loading));
            }
        }
        return t;
    }

    private int draw(Delivery delivery, int t) {
        int rig = delivery.rig();
        WaterTrip trip = delivery.trip;
        int at = tables.water().place(trip.point());
        int there = drive(rig, at, times.arrival(rig, states.place(rig), at, t), t);
        int start = clock.beginsDraw(rig, trip, there);
        int end = clock.end(rig, start, trip.drawS());
        state.draws().book(trip.point(), start, end - start, trip.drawMl());
        tally.add(WATER_TRIPS, 1);
        tally.add(DRAWN_ML, trip.drawMl());
        state.hours().rigWorked(rig, start, end);
        if (state.isTold()) {
            state.journal().drew(rig, trip.point(), start, end, trip.drawMl());
        }
        return end;
    }

    /**
     * Passes the load on, and is free again: after the clean that the load's last batch still wants.
     *
     * @param end when it is done with the load, s: at the end of the transfer, or, if the planter is mounted on it, with all that the
     *     planter does out of the load
     */
    public void passOn(Delivery delivery, int end) {
        int rig = delivery.rig();
        states.passOn(rig, delivery.loadDm2);
        states.filledAPlanter(rig, delivery.transferStart());
        states.freeFrom(rig, end);
        int clean = tables.rigs().cleanS(rig);
        if ((delivery.extraction.batches == 0 && !states.isCleanDue(rig)) || clean == 0) {
            return;
        }
        states.cleanDue(rig, false);
        int planned = tables.rigs().hours(rig).earliest(end, clean);
        if (planned >= NEVER) {
            states.freeFrom(rig, planned + clean);
            return;
        }
        int start = clock.begins(rig, planned, end, clean);
        int cleanEnd = clock.end(rig, start, clean);
        states.freeFrom(rig, cleanEnd);
        state.hours().rigWorked(rig, start, cleanEnd);
        if (state.isTold()) {
            state.journal().cleaned(rig, states.place(rig), start, cleanEnd);
        }
    }

    /** Nobody can plant anything any more out of a load that was brought: it is let out where the rig stands. */
    public void waste(Delivery delivery) {
        int rig = delivery.rig();
        int recipe = request.recipe();
        if (!delivery.isInSeason()) {
            states.freeFrom(rig, delivery.there);
            return;
        }
        states.mix(rig, Math.max(states.mixDm2(rig), delivery.mixDm2), recipe, delivery.useBy, delivery.plantBy);
        states.cleanDue(rig, states.isCleanDue(rig) || delivery.extraction.batches > 0);
        int known = Math.max(delivery.there, delivery.useBy - delivery.transferS);
        if (state.isTold()) {
            long ml = tables.recipes().mixMl(delivery.loadDm2, recipe);
            state.journal().wasted(request.planter(), rig, recipe, known, ml, delivery.loadDm2);
        }
        int dumpS = times.dumpS(rig);
        int start = clock.begins(rig, known, known, dumpS);
        int end = clock.end(rig, start, dumpS);
        dump(rig, start, end);
        states.freeFrom(rig, end);
    }

    /** Lets out what mix is on board when the season is over. */
    public void dumpLeftover(int rig) {
        if (states.mixDm2(rig) > 0) {
            int free = states.freeS(rig);
            int duration = times.dumpS(rig);
            int start = tables.rigs().hours(rig).earliest(free, duration);
            if (start >= NEVER) {
                start = free < NEVER ? free : tables.season().days() * Calendars.DAY_S;
                duration = 0;
            }
            dump(rig, start, start + duration);
        }
    }

    private void dump(int rig, int start, int end) {
        int recipe = states.mixRecipe(rig);
        long dm2 = states.mixDm2(rig);
        long ml = tables.recipes().mixMl(dm2, recipe);
        tally.add(DUMPED_ML, ml);
        tally.add(DUMPED_MG, tables.recipes().compostMg(dm2, recipe));
        states.passOn(rig, dm2);
        state.hours().rigWorked(rig, start, end);
        if (state.isTold()) {
            state.journal().dumped(rig, states.place(rig), start, end, ml);
        }
    }

    /**
     * Drives to a place, and returns when it is there.
     *
     * @param arrival by plan, s
     * @param free when it is done with what comes before, s
     */
    private int drive(int rig, int to, int arrival, int free) {
        int from = states.place(rig);
        if (from == to) {
            return free;
        }
        int duration = times.driveS(rig, from, to);
        int start = clock.begins(rig, arrival >= NEVER ? free : arrival - duration, free, duration);
        int end = clock.driveEnd(rig, start, duration);
        tally.add(CALL_OUTS, states.left(rig, start));
        tally.add(DRIVE_S, duration);
        tally.add(DRIVE_M, tables.places().metres(from, to));
        states.moveTo(rig, to);
        state.hours().rigWorked(rig, start, end);
        if (state.isTold()) {
            state.journal().rigMoved(rig, from, to, start, end);
        }
        return end;
    }

    private void extract(Delivery delivery, int place) {
        Extraction extraction = delivery.extraction;
        if (extraction.batches == 0) {
            return;
        }
        if (!clock.isAsPlanned() && isLate(delivery) && !layAgain(delivery)) {
            return;
        }
        tally.add(BATCHES, extraction.batches);
        tally.add(COMPOST_MG, extraction.compostMg);
        state.lots().take(delivery.rig(), extraction.compostMg);
        if (state.isTold() || state.hours().counts() || !clock.isAsPlanned()) {
            makeBatches(delivery, place);
        }
    }

    private boolean isLate(Delivery delivery) {
        int cleanS = states.isCleanDue(delivery.rig()) ? tables.rigs().cleanS(delivery.rig()) : 0;
        return delivery.there + cleanS > delivery.extraction.start;
    }

    /** A rig that is late makes its batches later, and all after a break rather than some before it. Returns whether there is time in the season. */
    private boolean layAgain(Delivery delivery) {
        int transferStart = delivery.transferStart;
        delivery.transferStart = NEVER;
        preparation.extract(delivery, delivery.there, delivery.carryS);
        if (delivery.isInSeason()) {
            delivery.putOff(Math.max(delivery.transferStart, transferStart));
            preparation.lay(delivery, true);
        }
        return delivery.isInSeason();
    }

    private void makeBatches(Delivery delivery, int place) {
        Extraction extraction = delivery.extraction;
        int rig = delivery.rig();
        Calendar hours = tables.rigs().hours(rig);
        int clean = tables.rigs().cleanS(rig);
        int[] starts = starts(extraction.batches);
        extraction.backward(delivery.depart, starts);
        int t = delivery.there;
        if (states.isCleanDue(rig) && clean > 0) {
            t = clean(rig, place, hours.latest(starts[0], clean) - clean, t);
        }
        for (int batch = 1; batch <= extraction.batches; batch++) {
            int start = clock.begins(rig, starts[batch - 1], t, extraction.batchS());
            int end = clock.batchEnd(rig, start, extraction.batchS());
            state.hours().rigWorked(rig, start, end);
            if (state.isTold()) {
                state.journal()
                        .extracted(rig, place, start, end, extraction.compostOf(batch), extraction.waterOf(batch, rig));
            }
            if (batch == 1) {
                extraction.oldestEnd = end;
            }
            t = end;
            if (batch < extraction.batches && clean > 0) {
                t = clean(rig, place, hours.earliest(end, clean), end);
            }
        }
        delivery.there = t;
    }

    private int clean(int rig, int place, int planned, int free) {
        int cleanS = tables.rigs().cleanS(rig);
        int start = clock.begins(rig, planned < NEVER ? planned : free, free, cleanS);
        int end = clock.end(rig, start, cleanS);
        state.hours().rigWorked(rig, start, end);
        if (state.isTold()) {
            state.journal().cleaned(rig, place, start, end);
        }
        return end;
    }

    private int[] starts(int batches) {
        if (batchStarts.length < batches) {
            batchStarts = new int[batches];
        }
        return batchStarts;
    }
}

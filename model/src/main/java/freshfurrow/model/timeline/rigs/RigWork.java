package freshfurrow.model.timeline.rigs;

import static freshfurrow.model.timeline.calendar.Calendar.NEVER;
import static freshfurrow.model.timeline.state.Tally.BATCHES;
import static freshfurrow.model.timeline.state.Tally.CALL_OUTS;
import static freshfurrow.model.timeline.state.Tally.COMPOST_MG;
import static freshfurrow.model.timeline.state.Tally.COMPOST_TRIPS;
import static freshfurrow.model.timeline.state.Tally.DRIVE_M;
import static freshfurrow.model.timeline.state.Tally.DRIVE_S;
import static freshfurrow.model.timeline.state.Tally.DUMPED_MG;
import static freshfurrow.model.timeline.state.Tally.DUMPED_ML;
import static freshfurrow.model.timeline.state.Tally.WATER_TRIPS;

import freshfurrow.model.timeline.calendar.Calendar;
import freshfurrow.model.timeline.calendar.Calendars;
import freshfurrow.model.timeline.planters.LoadRequest;
import freshfurrow.model.timeline.state.Journal;
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

    public RigWork(SeasonTables tables, LoadRequest request, State state, RigTimes times) {
        this.tables = tables;
        this.request = request;
        this.state = state;
        this.tally = state.tally();
        this.states = state.rigs();
        this.times = times;
    }

    /** Lets out what mix is on board before a delivery. */
    public void letOut(Delivery delivery) {
        int rig = delivery.rig();
        if (states.mixDm2(rig) > 0) {
            dump(rig, delivery.dumpEnd - times.dumpS(rig), delivery.dumpEnd);
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

    /** Draws water, makes all batches there, and drives to the planter with them. */
    public void makeAtWater(Delivery delivery) {
        int rig = delivery.rig();
        fetch(delivery);
        extract(delivery, states.place(rig));
        drive(rig, request.place(), delivery.depart + times.driveS(rig, states.place(rig), request.place()));
        states.mix(rig, delivery.mixDm2, request.recipe(), delivery.useBy, delivery.plantBy);
    }

    /** Sets off for the planter at {@code t} or as soon after as its hours allow. */
    public void driveToPlanter(Delivery delivery, int t) {
        int rig = delivery.rig();
        drive(rig, request.place(), times.arrival(rig, states.place(rig), request.place(), t));
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
            drive(rig, at, times.arrival(rig, states.place(rig), at, t));
            t = compost.end(loading);
            state.lots().load(rig, lot, compost.mg(loading));
            tally.add(COMPOST_TRIPS, 1);
            if (state.isTold()) {
                state.journal().loadedCompost(rig, lot, compost.start(loading), t, compost.mg(loading));
            }
        }
        return t;
    }

    private int draw(Delivery delivery, int t) {
        int rig = delivery.rig();
        WaterTrip trip = delivery.trip;
        int at = tables.water().place(trip.point());
        drive(rig, at, times.arrival(rig, states.place(rig), at, t));
        state.draws().book(trip.point(), trip.drawStart(), trip.drawS(), trip.drawMl());
        tally.add(WATER_TRIPS, 1);
        if (state.isTold()) {
            state.journal().drew(rig, trip.point(), trip.drawStart(), trip.drawEnd(), trip.drawMl());
        }
        return trip.drawEnd();
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
        int start = tables.rigs().hours(rig).earliest(end, clean);
        states.freeFrom(rig, start + clean);
        if (state.isTold() && start < NEVER) {
            state.journal().cleaned(rig, states.place(rig), start, start + clean);
        }
    }

    /** Lets out what mix is on board when the season is over. */
    public void dumpLeftover(int rig) {
        if (states.mixDm2(rig) > 0) {
            int free = states.freeS(rig);
            int duration = times.dumpS(rig);
            int start = tables.rigs().hours(rig).earliest(free, duration);
            if (start >= NEVER) {
                start = Math.min(free, tables.season().days() * Calendars.DAY_S);
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
        if (state.isTold()) {
            state.journal().dumped(rig, states.place(rig), start, end, ml);
        }
    }

    private void drive(int rig, int to, int arrival) {
        int from = states.place(rig);
        if (from == to) {
            return;
        }
        int duration = times.driveS(rig, from, to);
        tally.add(CALL_OUTS, states.left(rig, arrival - duration));
        tally.add(DRIVE_S, duration);
        tally.add(DRIVE_M, tables.places().metres(from, to));
        states.moveTo(rig, to);
        if (state.isTold()) {
            state.journal().rigMoved(rig, from, to, arrival - duration, arrival);
        }
    }

    private void extract(Delivery delivery, int place) {
        Extraction extraction = delivery.extraction;
        if (extraction.batches == 0) {
            return;
        }
        tally.add(BATCHES, extraction.batches);
        tally.add(COMPOST_MG, extraction.compostMg);
        state.lots().take(delivery.rig(), extraction.compostMg);
        if (state.isTold()) {
            record(state.journal(), delivery, place);
        }
    }

    private void record(Journal journal, Delivery delivery, int place) {
        Extraction extraction = delivery.extraction;
        int rig = delivery.rig();
        int[] starts = new int[extraction.batches];
        extraction.backward(delivery.depart, starts);
        Calendar hours = tables.rigs().hours(rig);
        int clean = tables.rigs().cleanS(rig);
        if (states.isCleanDue(rig) && clean > 0) {
            int cleanEnd = hours.latest(starts[0], clean);
            journal.cleaned(rig, place, cleanEnd - clean, cleanEnd);
        }
        for (int batch = 1; batch <= extraction.batches; batch++) {
            int start = starts[batch - 1];
            int end = start + extraction.batchS();
            journal.extracted(rig, place, start, end, extraction.compostOf(batch), extraction.waterOf(batch, rig));
            if (batch < extraction.batches && clean > 0) {
                int cleanStart = hours.earliest(end, clean);
                journal.cleaned(rig, place, cleanStart, cleanStart + clean);
            }
        }
    }
}

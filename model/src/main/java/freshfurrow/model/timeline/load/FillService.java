package freshfurrow.model.timeline.load;

import static freshfurrow.model.timeline.calendar.Calendar.NEVER;

import freshfurrow.model.timeline.actual.ActualTimes;
import freshfurrow.model.timeline.calendar.Calendars;
import freshfurrow.model.timeline.mix.LoadCeiling;
import freshfurrow.model.timeline.mix.MixSources;
import freshfurrow.model.timeline.mix.Quote;
import freshfurrow.model.timeline.mix.RigDay;
import freshfurrow.model.timeline.planters.FieldOrder;
import freshfurrow.model.timeline.planters.FieldRun;
import freshfurrow.model.timeline.planters.Flushing;
import freshfurrow.model.timeline.planters.Foreseen;
import freshfurrow.model.timeline.planters.LoadRequest;
import freshfurrow.model.timeline.planters.Planting;
import freshfurrow.model.timeline.planters.Requests;
import freshfurrow.model.timeline.planters.Walk;
import freshfurrow.model.timeline.rigs.Delivery;
import freshfurrow.model.timeline.rigs.Preparation;
import freshfurrow.model.timeline.rigs.RigTimes;
import freshfurrow.model.timeline.rigs.RigWork;
import freshfurrow.model.timeline.rigs.WaterPoints;
import freshfurrow.model.timeline.state.PlanterStates;
import freshfurrow.model.timeline.state.Shortfall;
import freshfurrow.model.timeline.state.State;
import freshfurrow.model.timeline.state.Tally;
import freshfurrow.model.timeline.tables.SeasonTables;

/** Serves one request for a fill: by which rig, how much of it, and what it brings about. */
public final class FillService {
    private final SeasonTables tables;
    private final State state;
    private final LoadRequest request;
    private final Requests requests;
    private final FieldOrder order;
    private final MixSources sources;
    private final RigChoice rigChoice;
    private final LoadChoice loadChoice;
    private final RigWork rigWork;
    private final Planting planting;
    private final ComingForFill coming;
    private final WithoutExtract without;
    private final RigTimes times;
    private final Foreseen foreseen;

    public FillService(
            SeasonTables tables,
            State state,
            FieldOrder order,
            Walk walk,
            Planting planting,
            Requests requests,
            Flushing flushing,
            Foreseen foreseen) {
        this.tables = tables;
        this.state = state;
        this.requests = requests;
        this.order = order;
        this.planting = planting;
        request = new LoadRequest();
        times = new RigTimes(tables, state.rigs());
        WaterPoints points = new WaterPoints(tables, state.draws());
        Preparation preparation = new Preparation(tables, state, request, times, points);
        sources = new MixSources(tables, request, state, preparation, times, points);
        FieldRun run = new FieldRun(tables.fields(), request, state.planters(), order);
        LoadCeiling ceilings = new LoadCeiling(tables, request, state.lots(), run);
        Quote[] quotes = Quote.ofAllRigs(tables, sources, new RigDay(tables, state, request));
        rigChoice = new RigChoice(tables, state, request, times, points, sources, ceilings, quotes);
        LoadSizer sizer = new LoadSizer(
                tables,
                request,
                times,
                ceilings,
                new LoadRounding(tables, request, state.lots(), run),
                new TrialPlanting(tables, request, times, state.lots(), walk),
                new SmallLoad(tables, state, request),
                quotes);
        loadChoice = new LoadChoice(tables, request, rigChoice, sources, sizer, walk);
        rigWork = new RigWork(tables, request, state, times, preparation, points);
        this.foreseen = foreseen;
        coming = new ComingForFill(tables, state, request, order, requests, flushing);
        without = new WithoutExtract(tables, state, request, order, requests, planting, coming);
    }

    /** Serves the request of a planter, or makes it again later, or gives its fields up. */
    public void serve(int planter) {
        PlanterStates planters = state.planters();
        int need = planters.needS(planter);
        int recipe = order.recipe(planter, planters.index(planter));
        request.ask(planter, requests.place(planter), recipe, need);
        if (recipe == FieldOrder.WITHOUT_EXTRACT) {
            without.plantAsDecided();
            return;
        }
        int lotFrom = state.lots().availableFrom();
        if (lotFrom > need && !sources.hasMix(planter, recipe, need)) {
            if (without.plantWithoutCompost(lotFrom)) {
                return;
            }
            if (lotFrom >= NEVER) {
                requests.giveUp(planter, Shortfall.COMPOST, need);
            } else {
                requests.awaitCompost(planter, lotFrom);
            }
            return;
        }
        if (foreseen.isUnheardOf(planter) && makeUnawares(planter, recipe)) {
            return;
        }
        Quote first = rigChoice.choose();
        if (first == null) {
            if (without.plantForWantOfLoads()) {
                return;
            }
            requests.giveUp(planter, lotFrom >= NEVER ? Shortfall.COMPOST : Shortfall.NO_LOAD, need);
            return;
        }
        Quote chosen = loadChoice.choose(first, !planters.asksAfresh(planter));
        if (chosen == null) {
            if (!without.plantRatherThanPostpone()) {
                requests.postpone(planter);
            }
            return;
        }
        Delivery delivery = chosen.settled();
        if (without.plantRatherThanWait(delivery)) {
            return;
        }
        supply(chosen, delivery);
    }

    /** Has a load made for when a planter was to be done that broke down after the load was begun, and says whether that was so. */
    private boolean makeUnawares(int planter, int recipe) {
        int place = request.place();
        int need = request.needS();
        int down = foreseen.downS(planter);
        int expected = tables.planters().hours(planter).next(foreseen.doneS(planter));
        foreseen.heard(planter);
        if (expected >= need || state.planters().fillDay(planter) != expected / Calendars.DAY_S) {
            return false;
        }
        request.ask(planter, place, recipe, expected);
        Quote first = rigChoice.choose();
        Quote chosen = first == null ? null : loadChoice.choose(first, true);
        boolean isBegun = chosen != null && chosen.settled().begins() < down;
        request.ask(planter, place, recipe, need);
        if (chosen == null || !isBegun) {
            return false;
        }
        supply(chosen, chosen.delivery());
        return true;
    }

    private void supply(Quote chosen, Delivery delivery) {
        int planter = request.planter();
        state.planters().postponeNoMore(planter);
        chosen.source().bring(delivery, rigWork);
        if (state.actual() != null && !isTransferred(state.actual(), delivery)) {
            rigWork.waste(delivery);
        } else {
            fill(delivery);
        }
        requests.ask(planter);
    }

    /** Settles when the transfer starts and ends, as it turns out; false where nothing of the load could be planted any more. */
    private boolean isTransferred(ActualTimes actual, Delivery delivery) {
        if (!delivery.isInSeason()) {
            return false;
        }
        int planter = request.planter();
        int rig = delivery.rig();
        int transferS = delivery.transferS();
        int start = times.fitTransfer(planter, rig, Math.max(delivery.there(), request.needS()), transferS);
        while (start < NEVER && coming.there(start) > start) {
            start = times.fitTransfer(planter, rig, coming.there(start), transferS);
        }
        if (start + transferS >= delivery.useBy()) {
            return false;
        }
        if (start > delivery.transferStart()) {
            delivery.rigReady(delivery.there());
        }
        delivery.transferred(start, actual.transferEnd(rig, start, transferS));
        return true;
    }

    private void fill(Delivery delivery) {
        int planter = request.planter();
        int recipe = request.recipe();
        int start = delivery.transferStart();
        int end = delivery.transferEnd();
        long loadDm2 = delivery.loadDm2();
        coming.before(delivery);
        state.tally().add(Tally.FILLS, 1);
        state.days().filled(planter, start);
        state.hours().filled(planter, delivery.rig(), start, end);
        if (state.isTold()) {
            long ml = tables.recipes().mixMl(loadDm2, recipe);
            state.journal().filled(planter, delivery.rig(), recipe, request.place(), start, end, ml, delivery.useBy());
        }
        boolean mounted = tables.planters().isMounted(planter);
        if (!mounted) {
            rigWork.passOn(delivery, end);
        }
        long planted = planting.plant(planter, end, recipe, loadDm2, delivery.plantBy(), delivery.useBy());
        if (planted < loadDm2 && state.actual() != null) {
            spoil(recipe, loadDm2, loadDm2 - planted);
        } else if (planted < loadDm2) {
            throw new IllegalStateException("a load for " + loadDm2 + " dm2 planted only " + planted);
        }
        if (mounted) {
            state.rigs().moveTo(delivery.rig(), state.planters().place(planter));
            rigWork.passOn(delivery, state.planters().timeS(planter));
        }
        state.planters().filledOn(planter, start / Calendars.DAY_S);
    }

    /** What is still in a planter's tank is too old. */
    private void spoil(int recipe, long loadDm2, long dm2) {
        state.tally()
                .add(
                        Tally.DUMPED_ML,
                        tables.recipes().mixMl(loadDm2, recipe)
                                - tables.recipes().mixMl(loadDm2 - dm2, recipe));
        state.tally().add(Tally.DUMPED_MG, tables.recipes().compostMg(dm2, recipe));
    }

    /** Lets out what mix is on board of rigs when the season is over, and ends what was counted by the day. */
    public void end() {
        for (int p = 0; p < tables.planters().count(); p++) {
            state.days().end(p);
        }
        for (int r = 0; r < tables.rigs().count(); r++) {
            rigWork.dumpLeftover(r);
            state.tally().add(Tally.CALL_OUTS, state.rigs().wasOutForNothing(r));
        }
        state.hours().end();
    }
}

package freshfurrow.model.timeline.load;

import static freshfurrow.model.timeline.calendar.Calendar.NEVER;

import freshfurrow.model.timeline.calendar.Calendars;
import freshfurrow.model.timeline.mix.LoadCeiling;
import freshfurrow.model.timeline.mix.MixSources;
import freshfurrow.model.timeline.mix.Quote;
import freshfurrow.model.timeline.mix.RigDay;
import freshfurrow.model.timeline.planters.FieldOrder;
import freshfurrow.model.timeline.planters.FieldRun;
import freshfurrow.model.timeline.planters.Flushing;
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

    public FillService(
            SeasonTables tables,
            State state,
            FieldOrder order,
            Walk walk,
            Planting planting,
            Requests requests,
            Flushing flushing) {
        this.tables = tables;
        this.state = state;
        this.requests = requests;
        this.order = order;
        this.planting = planting;
        request = new LoadRequest();
        RigTimes times = new RigTimes(tables, state.rigs());
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
        rigWork = new RigWork(tables, request, state, times);
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
        planters.postponeNoMore(planter);
        supply(chosen, delivery);
        requests.ask(planter);
    }

    private void supply(Quote chosen, Delivery delivery) {
        int planter = request.planter();
        int recipe = request.recipe();
        int start = delivery.transferStart();
        int end = delivery.transferEnd();
        long loadDm2 = delivery.loadDm2();
        coming.before(delivery);
        state.tally().add(Tally.FILLS, 1);
        state.days().filled(planter, start);
        chosen.source().bring(delivery, rigWork);
        if (state.isTold()) {
            long ml = tables.recipes().mixMl(loadDm2, recipe);
            state.journal().filled(planter, delivery.rig(), recipe, request.place(), start, end, ml, delivery.useBy());
        }
        boolean mounted = tables.planters().isMounted(planter);
        if (!mounted) {
            rigWork.passOn(delivery, end);
        }
        long planted = planting.plant(planter, end, recipe, loadDm2, delivery.plantBy(), delivery.useBy());
        if (planted < loadDm2) {
            throw new IllegalStateException("a load for " + loadDm2 + " dm2 planted only " + planted);
        }
        if (mounted) {
            state.rigs().moveTo(delivery.rig(), state.planters().place(planter));
            rigWork.passOn(delivery, state.planters().timeS(planter));
        }
        state.planters().filledOn(planter, start / Calendars.DAY_S);
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
    }
}

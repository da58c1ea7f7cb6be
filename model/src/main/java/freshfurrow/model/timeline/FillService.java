package freshfurrow.model.timeline;

import static freshfurrow.model.timeline.Calendar.NEVER;

import freshfurrow.model.plan.WaitReason;

/** Serves one request for a fill: by which rig, how much of it, and what it brings about. */
final class FillService {
    private final CompiledSeason season;
    private final State state;
    private final LoadRequest request;
    private final Requests requests;
    private final FieldOrder order;
    private final MixSources sources;
    private final RigChoice rigChoice;
    private final LoadChoice loadChoice;
    private final RigWork rigWork;
    private final Planting planting;

    FillService(CompiledSeason season, State state, FieldOrder order, Walk walk, Planting planting, Requests requests) {
        this.season = season;
        this.state = state;
        this.requests = requests;
        this.order = order;
        this.planting = planting;
        request = new LoadRequest();
        RigTimes times = new RigTimes(season, state.rigs);
        WaterPoints points = new WaterPoints(season, state.draws);
        Preparation preparation = new Preparation(season, state, request, times, points);
        sources = new MixSources(season, request, state, preparation, times, points);
        FieldRun run = new FieldRun(season.fields, request, state.planters, order);
        LoadCeiling ceilings = new LoadCeiling(season, request, state.lots, run);
        Quote[] quotes = Quote.ofAllRigs(season.rigs, sources);
        rigChoice = new RigChoice(season, state, request, times, points, sources, ceilings, quotes);
        LoadSizer sizer = new LoadSizer(
                season,
                request,
                times,
                ceilings,
                new LoadRounding(season, request, state.lots, run),
                new TrialPlanting(season, request, times, state.lots, walk),
                quotes);
        loadChoice = new LoadChoice(season, request, rigChoice, sources, sizer, walk);
        rigWork = new RigWork(season, request, state, times);
    }

    /** Serves the request of a planter, or makes it again later, or gives its fields up. */
    void serve(int planter) {
        PlanterStates planters = state.planters;
        int need = planters.needS(planter);
        int recipe = season.fields.recipe(order.field(planter, planters.index(planter)));
        int lotFrom = state.lots.availableFrom();
        if (lotFrom > need && !sources.hasMix(recipe, need)) {
            if (lotFrom >= NEVER) {
                requests.giveUp(planter, Shortfall.COMPOST, need);
            } else {
                requests.awaitCompost(planter, lotFrom);
            }
            return;
        }
        request.ask(planter, planters.place(planter), recipe, need);
        Quote first = rigChoice.choose();
        if (first == null) {
            requests.giveUp(planter, lotFrom >= NEVER ? Shortfall.COMPOST : Shortfall.NO_LOAD, need);
            return;
        }
        Quote chosen = loadChoice.choose(first, !planters.asksAfresh(planter));
        if (chosen == null) {
            requests.postpone(planter);
            return;
        }
        planters.postponeNoMore(planter);
        supply(chosen);
        requests.ask(planter);
    }

    private void supply(Quote chosen) {
        Delivery delivery = chosen.delivery();
        int planter = request.planter();
        int recipe = request.recipe();
        int start = delivery.transferStart();
        int end = delivery.transferEnd();
        long loadDm2 = delivery.loadDm2;
        waitFor(delivery);
        state.tally.add(Tally.FILLS, 1);
        chosen.source().bring(delivery, rigWork);
        if (state.journal != null) {
            long ml = season.recipes.mixMl(loadDm2, recipe);
            state.journal.filled(planter, delivery.rig(), recipe, request.place(), start, end, ml, delivery.useBy);
        }
        rigWork.passOn(delivery);
        long planted = planting.plant(planter, end, recipe, loadDm2, delivery.plantBy, delivery.useBy);
        if (planted < loadDm2) {
            throw new IllegalStateException("a load for " + loadDm2 + " dm2 planted only " + planted);
        }
        state.planters.filledOn(planter, start / Calendars.DAY_S);
    }

    /** A wait counts from when planting of the planter's next field could start. */
    private void waitFor(Delivery delivery) {
        int planter = request.planter();
        int start = delivery.transferStart();
        boolean compost = state.planters.awaitsCompost(planter);
        int since = compost ? state.planters.waitFromS(planter) : request.needS();
        state.planters.awaitCompostNoMore(planter);
        if (start <= since && state.journal == null) {
            return;
        }
        int couldPlant = requests.couldPlantFrom(planter);
        requests.standBy(planter, Math.min(couldPlant, start));
        int from = Math.max(since, couldPlant);
        if (start <= from) {
            return;
        }
        WaitReason why = compost ? WaitReason.COMPOST : reason(delivery, from);
        if (why != WaitReason.HOURS) {
            state.tally.add(Tally.WAIT_S, season.planters.hours(planter).work(from, start));
        }
        if (state.journal != null) {
            state.journal.waited(planter, request.place(), from, start, why);
        }
    }

    private static WaitReason reason(Delivery delivery, int from) {
        if (delivery.rigReady <= from) {
            return WaitReason.HOURS;
        }
        return delivery.trip.isWaitedFor() ? WaitReason.WATER : WaitReason.RIG;
    }

    /** Lets out what mix is on board of rigs when the season is over. */
    void end() {
        for (int r = 0; r < season.rigs.count(); r++) {
            rigWork.dumpLeftover(r);
        }
    }
}

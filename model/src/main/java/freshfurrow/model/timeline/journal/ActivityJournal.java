package freshfurrow.model.timeline.journal;

import static freshfurrow.model.quantity.Factors.G_PER_KG;
import static freshfurrow.model.quantity.Factors.MG_PER_G;
import static freshfurrow.model.quantity.Factors.M_PER_KM;
import static freshfurrow.model.timeline.tables.Scale.DM2_PER_HA;
import static freshfurrow.model.timeline.tables.Scale.ML_PER_L;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.WaitReason;
import freshfurrow.model.season.Mix;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.SeasonTime;
import freshfurrow.model.season.Standing;
import freshfurrow.model.timeline.state.Journal;
import freshfurrow.model.timeline.state.Shortfall;
import freshfurrow.model.timeline.state.WithoutReason;
import freshfurrow.model.timeline.tables.SeasonTables;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** Writes down what happens as activities, loads and batches. */
public final class ActivityJournal implements Journal {
    private final SeasonTables tables;
    private final SeasonTime time;
    /** Put together only when all are there, as loads get their ids then; likewise {@code rigs}. */
    private final List<List<Supplier<Activity>>> planters;

    private final List<List<Supplier<Activity>>> rigs;
    private final List<LoadNote> loads = new ArrayList<>();
    private final List<BatchNote> batches = new ArrayList<>();
    private final List<Left> unserved = new ArrayList<>();
    private final WithoutParts without;
    private final LoadNote[] inTank;
    private final Optional<Standing> standing;
    private final List<List<String>> inMix = new ArrayList<>();
    private final SharesOnBoard onBoard;

    public ActivityJournal(SeasonTables tables) {
        this.tables = tables;
        time = tables.season().time();
        planters = empty(tables.planters().count());
        rigs = empty(tables.rigs().count());
        without = new WithoutParts();
        inTank = new LoadNote[tables.planters().count()];
        standing = tables.season().standing();
        onBoard = new SharesOnBoard(tables.season());
        for (Rig rig : tables.season().rigs()) {
            inMix.add(new ArrayList<>(standing.map(machines -> machines.rigs().get(rig.id()))
                    .flatMap(Standing.OfRig::mix)
                    .map(Mix::batches)
                    .orElse(List.of())));
        }
    }

    /**
     * Loads in the order of their transfers, after those that are in tanks to begin with; gives them their ids, by which
     * activities name them, so that it is asked before those are.
     */
    public List<Plan.Load> loads() {
        List<LoadNote> ordered = ordered();
        List<Plan.Load> made = new ArrayList<>();
        for (LoadNote load : ordered) {
            double appliedL = tables.recipes().mixMl(load.plantedDm2, load.recipe) / ML_PER_L;
            made.add(new Plan.Load(
                    load.id,
                    tables.season().applicators().get(load.planter).id(),
                    load.rig,
                    tables.season().recipes().get(load.recipe).id(),
                    load.ml / ML_PER_L,
                    load.batches,
                    appliedL,
                    Math.max(0, load.ml / ML_PER_L - appliedL),
                    at(load.deadline),
                    at(load.lastDrop),
                    load.plantedDm2 > 0
                            && tables.clock().between(load.lastDrop, load.deadline)
                                    < tables.season().recipes().get(load.recipe).reserveS()));
        }
        return made;
    }

    public List<Plan.Batch> batches() {
        LotShares shares = new LotShares(tables);
        boolean fetched = tables.compost().isFetched();
        Map<BatchNote, Map<String, Double>> lotsOf = new HashMap<>();
        batches.stream()
                .sorted(Comparator.comparingInt(batch -> batch.start))
                .forEach(batch -> lotsOf.put(
                        batch, fetched ? onBoard.next(batch.rig, batch.compostMg) : shares.next(batch.compostMg)));
        return batches.stream()
                .map(batch -> batch(batch, lotsOf.getOrDefault(batch, Map.of())))
                .toList();
    }

    private Plan.Batch batch(BatchNote batch, Map<String, Double> lots) {
        return new Plan.Batch(
                batch.id,
                tables.season().rigs().get(batch.rig).id(),
                at(batch.start),
                at(batch.end),
                Math.round(lots.values().stream().mapToDouble(kg -> kg).sum() * G_PER_KG) / G_PER_KG,
                batch.waterMl / ML_PER_L,
                lots);
    }

    public List<Left> unserved() {
        return unserved;
    }

    /** What is planted without extract, in the order in which that begins. */
    public List<Without> without() {
        return without.all();
    }

    public List<Activity> planterActivities(int planter) {
        return DaysOfPlanter.with(tables, planter, told(planters.get(planter)));
    }

    public List<Activity> rigActivities(int rig) {
        List<Activity> own = told(rigs.get(rig));
        List<Activity> mounted = mountedOn(rig);
        if (mounted.isEmpty()) {
            return DaysOfRig.with(tables, rig, own);
        }
        List<Activity> both = new ArrayList<>(own);
        both.addAll(mounted);
        both.sort(Comparator.comparing(Activity::start));
        List<Activity> withDays = new ArrayList<>(DaysOfRig.with(tables, rig, both));
        withDays.removeAll(mounted);
        return withDays;
    }

    /** What a rig does as the machines that are mounted on it; a fill is the rig's transfer. */
    private List<Activity> mountedOn(int rig) {
        List<Activity> all = new ArrayList<>();
        for (int p = 0; p < tables.planters().count(); p++) {
            if (tables.planters().isMounted(p) && tables.planters().rig(p) == rig) {
                planterActivities(p).stream()
                        .filter(activity -> !(activity instanceof Activity.Fill))
                        .forEach(all::add);
            }
        }
        return all;
    }

    private static List<List<Supplier<Activity>>> empty(int machines) {
        List<List<Supplier<Activity>>> lists = new ArrayList<>();
        for (int i = 0; i < machines; i++) {
            lists.add(new ArrayList<>());
        }
        return lists;
    }

    private static List<Activity> told(List<Supplier<Activity>> activities) {
        return activities.stream().map(Supplier::get).toList();
    }

    @Override
    public void carried(int planter, int recipe, long ml, int deadline) {
        String id = tables.season().applicators().get(planter).id();
        standing.map(machines -> machines.planters().get(id))
                .flatMap(Standing.OfPlanter::tank)
                .ifPresent(tank -> {
                    int now = tables.beginning().nowS();
                    LoadNote load = new LoadNote(
                            planter,
                            tank.rig(),
                            recipe,
                            now,
                            ml,
                            deadline,
                            tank.mix().batches());
                    load.carried = true;
                    load.id = tank.load();
                    load.lastDrop = now;
                    loads.add(load);
                    inTank[planter] = load;
                });
    }

    @Override
    public void planterMoved(int planter, int from, int to, int start, int end) {
        planters.get(planter).add(() -> move(from, to, start, end));
    }

    @Override
    public void waited(int planter, int place, int start, int end, WaitReason why) {
        planters.get(planter)
                .add(() -> new Activity.Wait(at(start), at(end), tables.places().id(place), why));
    }

    @Override
    public void filled(int planter, int rig, int recipe, int place, int start, int end, long ml, int deadline) {
        String rigId = tables.season().rigs().get(rig).id();
        LoadNote load = new LoadNote(planter, rigId, recipe, start, ml, deadline, List.copyOf(inMix.get(rig)));
        loads.add(load);
        inTank[planter] = load;
        planters.get(planter)
                .add(() -> new Activity.Fill(at(start), at(end), tables.places().id(place), load.id));
        rigs.get(rig)
                .add(() -> new Activity.Transfer(
                        at(start), at(end), tables.places().id(place), load.id, ml / ML_PER_L));
    }

    @Override
    public void planted(int planter, int field, int start, int end, long dm2) {
        LoadNote load = inTank[planter];
        load.plantedDm2 += dm2;
        load.lastDrop = end;
        planters.get(planter)
                .add(() ->
                        new Activity.Plant(at(start), at(end), tables.places().id(field), load.id, dm2 / DM2_PER_HA));
    }

    @Override
    public void goesWithout(int planter, WithoutReason why, int untilS, int rig, int waitS) {
        without.goes(planter, why, untilS, rig, waitS);
    }

    @Override
    public void plantedWithout(int planter, int field, int start, int end, long dm2) {
        without.planted(planter, field, start, end, dm2);
        planters.get(planter)
                .add(() -> new Activity.PlantWithout(
                        at(start), at(end), tables.places().id(field), dm2 / DM2_PER_HA));
    }

    @Override
    public void flushed(int planter, int place, int start, int end) {
        planters.get(planter)
                .add(() ->
                        new Activity.Flush(at(start), at(end), tables.places().id(place)));
    }

    @Override
    public void rigMoved(int rig, int from, int to, int start, int end) {
        rigs.get(rig).add(() -> move(from, to, start, end));
    }

    @Override
    public void drew(int rig, int point, int start, int end, long ml) {
        rigs.get(rig)
                .add(() -> new Activity.Draw(
                        at(start), at(end), tables.places().id(tables.water().place(point)), ml / ML_PER_L));
    }

    @Override
    public void loadedCompost(int rig, int lot, int start, int end, long mg) {
        String id = tables.compost().id(lot);
        onBoard.loaded(rig, id, mg);
        String at = tables.places().id(tables.compost().place(lot));
        rigs.get(rig).add(() -> new Activity.LoadCompost(at(start), at(end), at, id, kilograms(mg)));
    }

    @Override
    public void newMix(int rig) {
        inMix.get(rig).clear();
    }

    @Override
    public void extracted(int rig, int place, int start, int end, long compostMg, long waterMl) {
        int number = standing.map(Standing::batches).orElse(0) + batches.size() + 1;
        BatchNote batch =
                new BatchNote(String.format(Locale.ROOT, "B%04d", number), rig, start, end, compostMg, waterMl);
        batches.add(batch);
        inMix.get(rig).add(batch.id);
        rigs.get(rig)
                .add(() ->
                        new Activity.Extract(at(start), at(end), tables.places().id(place), batch.id));
    }

    @Override
    public void cleaned(int rig, int place, int start, int end) {
        rigs.get(rig)
                .add(() ->
                        new Activity.Clean(at(start), at(end), tables.places().id(place)));
    }

    @Override
    public void dumped(int rig, int place, int start, int end, long ml) {
        rigs.get(rig)
                .add(() -> new Activity.Dump(at(start), at(end), tables.places().id(place), ml / ML_PER_L));
    }

    @Override
    public void unserved(int field, long dm2, Shortfall why, int since) {
        unserved.add(new Left(field, dm2, why, since));
    }

    @Override
    public void wasted(int planter, int rig, int recipe, int s, long ml, long dm2) {
        String rigId = tables.season().rigs().get(rig).id();
        LoadNote load = new LoadNote(planter, rigId, recipe, s, ml, s, List.copyOf(inMix.get(rig)));
        load.lastDrop = s;
        loads.add(load);
    }

    /** Kilograms to three decimals. */
    public static double kilograms(long mg) {
        return Math.round(mg / (double) MG_PER_G) / G_PER_KG;
    }

    private Activity.Move move(int from, int to, int start, int end) {
        return new Activity.Move(
                at(start),
                at(end),
                tables.places().id(from),
                tables.places().id(to),
                tables.places().metres(from, to) / M_PER_KM);
    }

    private LocalDateTime at(int s) {
        return time.at(s);
    }

    private List<LoadNote> ordered() {
        List<LoadNote> ordered = new ArrayList<>(loads);
        ordered.sort(Comparator.<LoadNote, Boolean>comparing(load -> !load.carried)
                .thenComparingInt(load -> load.start)
                .thenComparingInt(load -> load.planter));
        int number = standing.map(Standing::loads).orElse(0);
        for (LoadNote load : ordered) {
            if (!load.carried) {
                number++;
                load.id = String.format(Locale.ROOT, "L%04d", number);
            }
        }
        return ordered;
    }

    private static final class LoadNote {
        final int planter;
        final String rig;
        final int recipe;
        final int start;
        final long ml;
        final int deadline;
        final List<String> batches;
        long plantedDm2;
        int lastDrop;
        boolean carried;
        String id = "";

        LoadNote(int planter, String rig, int recipe, int start, long ml, int deadline, List<String> batches) {
            this.planter = planter;
            this.rig = rig;
            this.recipe = recipe;
            this.start = start;
            this.ml = ml;
            this.deadline = deadline;
            this.batches = batches;
        }
    }

    private static final class BatchNote {
        final String id;
        final int rig;
        final int start;
        final int end;
        final long compostMg;
        final long waterMl;

        BatchNote(String id, int rig, int start, int end, long compostMg, long waterMl) {
            this.id = id;
            this.rig = rig;
            this.start = start;
            this.end = end;
            this.compostMg = compostMg;
            this.waterMl = waterMl;
        }
    }
}

package freshfurrow.model.progress;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.ActivityVisitor;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.ExtractAt;
import freshfurrow.model.season.Mix;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Standing;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Follows a rig through what it has begun. */
final class RigSoFar implements ActivityVisitor.OfRig<RigSoFar> {
    /** A plan tells of compost in grams. */
    private static final double GRAM_KG = 0.001;

    private final Season season;
    private final PlannedLoads loads;
    private final Rig rig;
    private String at;
    private LocalDateTime freeFrom;
    private double onBoardL;
    private double mixHa;
    private double begunHa;
    private Optional<Recipe> recipe = Optional.empty();
    private Optional<LocalDateTime> deadline = Optional.empty();
    private List<String> batches = new ArrayList<>();
    private final Set<String> counted = new HashSet<>();
    private boolean cleanDue;
    private final CompostOnBoard compost = new CompostOnBoard();
    private Optional<LocalDateTime> setUpAt = Optional.empty();

    RigSoFar(Season season, PlannedLoads loads, LocalDateTime now, String id) {
        this.season = season;
        this.loads = loads;
        rig = season.rig(id);
        at = rig.at();
        freeFrom = now;
        season.standing()
                .flatMap(standing -> Optional.ofNullable(standing.rigs().get(id)))
                .ifPresent(this::begin);
    }

    private void begin(Standing.OfRig standing) {
        at = standing.at();
        busyUntil(standing.freeFrom());
        cleanDue = standing.cleanDue();
        standing.compostKg().forEach(compost::load);
        setUpAt = standing.setUpAt();
        onBoardL = standing.waterL();
        standing.mix().ifPresent(mix -> {
            Recipe its = season.recipe(mix.recipe());
            recipe = Optional.of(its);
            mixHa = mix.areaHa();
            begunHa = mixHa;
            onBoardL += mixHa * its.mixLPerHa();
            deadline = Optional.of(mix.deadline());
            batches.addAll(mix.batches());
        });
    }

    private void busyUntil(LocalDateTime end) {
        freeFrom = end.isAfter(freeFrom) ? end : freeFrom;
    }

    boolean extractsAtWater() {
        return rig.extractAt() == ExtractAt.WATER;
    }

    void did(Activity activity) {
        busyUntil(activity.end());
        at = activity.endsAt();
        onBoardL = Math.max(0, onBoardL + activity.onRigL());
        activity.accept(this);
    }

    @Override
    public RigSoFar visit(Activity.Move move) {
        return this;
    }

    @Override
    public RigSoFar visit(Activity.Draw draw) {
        return this;
    }

    @Override
    public RigSoFar visit(Activity.LoadCompost loading) {
        compost.load(loading.lot(), loading.kg());
        return this;
    }

    @Override
    public RigSoFar visit(Activity.Extract extract) {
        extracted(extract.batch());
        return this;
    }

    @Override
    public RigSoFar visit(Activity.Clean clean) {
        cleanDue = false;
        return this;
    }

    @Override
    public RigSoFar visit(Activity.Transfer transfer) {
        mixHa -= loads.ha(loads.load(transfer.load()), season);
        begunHa = mixHa;
        forgetMixThatIsGone();
        return this;
    }

    @Override
    public RigSoFar visit(Activity.Dump dump) {
        mixHa = 0;
        forgetMixThatIsGone();
        return this;
    }

    @Override
    public RigSoFar visit(Activity.SetUp setUp) {
        setUpAt = Optional.of(setUp.start());
        return this;
    }

    @Override
    public RigSoFar visit(Activity.CloseUp closeUp) {
        setUpAt = Optional.empty();
        return this;
    }

    private void extracted(String id) {
        cleanDue = true;
        Plan.Batch batch = loads.batch(id);
        List<Plan.Load> into = loads.of(id);
        Recipe its = season.recipe(into.get(0).recipe());
        recipe = Optional.of(its);
        batches.add(id);
        compost.use(batch.lots());
        if (deadline.isEmpty()) {
            deadline = Optional.of(into.get(0).deadline());
        }
        if (extractsAtWater()) {
            into.stream().filter(load -> counted.add(load.id())).forEach(load -> mixHa += loads.ha(load, season));
        } else if (batches.containsAll(into.get(0).batches())) {
            mixHa = Math.max(begunHa, loads.ha(into.get(0), season));
        } else {
            boolean full = Math.abs(batch.compostKg() - rig.batchCompostKg()) < GRAM_KG;
            mixHa += (full ? rig.batchCompostKg() : batch.compostKg()) / its.compostKgPerHa();
        }
    }

    private void forgetMixThatIsGone() {
        if (mixHa < Plan.LEAST_HA / 2) {
            mixHa = 0;
            begunHa = 0;
            recipe = Optional.empty();
            deadline = Optional.empty();
            batches = new ArrayList<>();
        }
    }

    Standing.OfRig standing() {
        Optional<Mix> mix = recipe.flatMap(
                its -> deadline.map(until -> new Mix(its.id(), Rounded.hectares(mixHa), until, batches)));
        double mixL = recipe.map(its -> mixHa * its.mixLPerHa()).orElse(0.0);
        double waterL = extractsAtWater() ? 0 : Math.max(0, onBoardL - mixL);
        return new Standing.OfRig(at, freeFrom, Rounded.litres(waterL), mix, cleanDue, compost.kg(), setUpAt);
    }
}

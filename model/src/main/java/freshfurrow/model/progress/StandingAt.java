package freshfurrow.model.progress;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.FromLog;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanStart;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Standing;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Where a season stands when a plan has been carried out up to some moment. What has begun by then is finished, but for planting, which
 * stops: what is not planted of a load stays in the tank. Mix of which a batch was begun at a water point is made in whole.
 */
public final class StandingAt {
    private static final double LEAST_KG = 0.001;

    private final Season season;
    private final Plan plan;
    private final LocalDateTime now;
    private final PlannedLoads loads;
    private final Map<PartKey, Double> planted = new LinkedHashMap<>();
    private final Map<String, Double> drawnL = new LinkedHashMap<>();
    private final Map<String, Double> loadedKg = new TreeMap<>();
    private final Set<String> fills = new HashSet<>();
    private final Set<String> batches = new HashSet<>();

    private StandingAt(Season season, Plan plan, LocalDateTime now) {
        this.season = season;
        this.plan = plan;
        this.now = now;
        loads = new PlannedLoads(plan);
    }

    /**
     * What was done of a plan before a moment.
     *
     * @param season what the plan was made for: what was left of the season then, when it was already under way
     * @param now not before the plan's own beginning
     * @throws IllegalArgumentException when it is
     */
    public static PlanStart of(Season season, Plan plan, LocalDateTime now) {
        plan.start().filter(start -> now.isBefore(start.now())).ifPresent(start -> {
            throw new IllegalArgumentException("the plan begins at " + start.now() + ", which is after " + now);
        });
        return new StandingAt(season, plan, now).start();
    }

    /** What of a planting is in the ground when it stops at a moment, ha. */
    public static double plantedHa(Activity.Planting planting, LocalDateTime now) {
        return PlanterSoFar.plantedHa(planting, now);
    }

    private PlanStart start() {
        Optional<Standing> before = season.standing();
        plan.start().ifPresent(start -> start.planted()
                .forEach(part -> planted.merge(new PartKey(part.field(), part.date()), part.areaHa(), Double::sum)));
        before.filter(standing -> standing.now().toLocalDate().equals(now.toLocalDate()))
                .ifPresent(standing -> drawnL.putAll(standing.drawnL()));

        Map<String, Standing.OfPlanter> planters = new LinkedHashMap<>();
        plan.planters().forEach((id, its) -> planters.put(id, planter(id, its)));
        Map<String, Standing.OfRig> rigs = new LinkedHashMap<>();
        plan.rigs().forEach((id, its) -> rigs.put(id, rig(id, its)));
        OneMachine.unite(season, plan, now, planters, rigs);
        Standing standing = new Standing(
                now,
                planters,
                rigs,
                drawnL,
                Map.of(),
                before.map(Standing::loads).orElse(0) + newLoads(),
                before.map(Standing::batches).orElse(0) + newBatches());
        return new PlanStart(
                standing,
                planted.entrySet().stream()
                        .map(part -> new PlanStart.Planted(
                                part.getKey().field(), part.getKey().date(), Rounded.hectares(part.getValue())))
                        .toList(),
                lotsLeft(),
                plan.start().map(PlanStart::rain).orElse(List.of()),
                season.outages(),
                plan.start().map(PlanStart::judged).orElse(Map.of()),
                batchesOnBoard(standing),
                plan.start().map(PlanStart::fromLog).orElse(FromLog.NOTHING),
                plan.start().flatMap(PlanStart::logSha256));
    }

    private record PartKey(String field, LocalDate date) {}

    private Standing.OfPlanter planter(String id, Plan.PlanterPlan its) {
        PlanterSoFar planter = new PlanterSoFar(season, loads, now, id);
        for (Activity activity : begun(its.activities())) {
            planter.did(activity);
            if (activity instanceof Activity.Fill fill) {
                fills.add(fill.load());
            } else if (activity instanceof Activity.Planting plant) {
                double areaHa = PlanterSoFar.plantedHa(plant, now);
                if (areaHa > 0) {
                    planted.merge(new PartKey(plant.field(), plant.start().toLocalDate()), areaHa, Double::sum);
                }
            }
        }
        return planter.standing();
    }

    private Standing.OfRig rig(String id, Plan.RigPlan its) {
        RigSoFar rig = new RigSoFar(season, loads, now, id);
        for (Activity activity : withMixMadeInWhole(its.activities(), rig.extractsAtWater())) {
            rig.did(activity);
            if (activity instanceof Activity.Extract extract) {
                batches.add(extract.batch());
            } else if (activity instanceof Activity.LoadCompost loading) {
                loadedKg.merge(loading.lot(), loading.kg(), Double::sum);
            } else if (activity instanceof Activity.Draw draw
                    && draw.start().toLocalDate().equals(now.toLocalDate())) {
                drawnL.merge(draw.at(), draw.litres(), Double::sum);
            }
        }
        return rig.standing();
    }

    private List<Activity> begun(List<Activity> activities) {
        return activities.stream()
                .filter(activity -> activity.start().isBefore(now))
                .toList();
    }

    private List<Activity> withMixMadeInWhole(List<Activity> activities, boolean atWater) {
        List<Activity> done = new ArrayList<>(begun(activities));
        boolean making = atWater && endsWithBatches(done);
        int lastBatch = done.size();
        for (int i = done.size(); making && i < activities.size(); i++) {
            Activity next = activities.get(i);
            making = isAmongBatches(next);
            lastBatch = next instanceof Activity.Extract ? i + 1 : lastBatch;
        }
        done.addAll(activities.subList(done.size(), lastBatch));
        return done;
    }

    /** Water that was drawn makes no mix: nobody makes batches only because there is water for them. */
    private static boolean endsWithBatches(List<Activity> done) {
        int last = done.size() - 1;
        while (last >= 0 && isAmongBatches(done.get(last)) && !(done.get(last) instanceof Activity.Extract)) {
            last--;
        }
        return last >= 0 && done.get(last) instanceof Activity.Extract;
    }

    /** A mix may be made on more than one day. */
    private static boolean isAmongBatches(Activity activity) {
        return activity instanceof Activity.Extract
                || activity instanceof Activity.Clean
                || activity instanceof Activity.SetUp
                || activity instanceof Activity.CloseUp;
    }

    /** Names of loads and batches that were in the plan to begin with are not counted again. */
    private int newLoads() {
        Set<String> carried = new HashSet<>();
        season.standing().ifPresent(standing -> standing.planters().values().forEach(planter -> planter.tank()
                .ifPresent(tank -> carried.add(tank.load()))));
        return lastOf(plan.loads().stream().map(Plan.Load::id).toList(), carried, fills);
    }

    private int newBatches() {
        Set<String> carried = new HashSet<>();
        plan.start().ifPresent(start -> start.batches().forEach(batch -> carried.add(batch.id())));
        return lastOf(plan.batches().stream().map(Plan.Batch::id).toList(), carried, batches);
    }

    private static int lastOf(List<String> all, Set<String> carried, Set<String> made) {
        List<String> ours = all.stream().filter(id -> !carried.contains(id)).toList();
        int last = 0;
        for (int i = 0; i < ours.size(); i++) {
            last = made.contains(ours.get(i)) ? i + 1 : last;
        }
        return last;
    }

    private List<CompostLot> lotsLeft() {
        Map<String, Double> gone = season.saysWhereCompostLies() ? loadedKg : usedKg();
        return season.compost().stream()
                .filter(lot -> leftKg(lot, gone) > LEAST_KG)
                .map(lot -> lot.withMassKg(leftKg(lot, gone)).withAt(Optional.empty()))
                .toList();
    }

    private Map<String, Double> usedKg() {
        Map<String, Double> used = new TreeMap<>();
        plan.batches().stream().filter(batch -> batches.contains(batch.id())).forEach(batch -> batch.lots()
                .forEach((lot, kg) -> used.merge(lot, kg, Double::sum)));
        return used;
    }

    private static double leftKg(CompostLot lot, Map<String, Double> used) {
        return Rounded.kilograms(lot.massKg() - used.getOrDefault(lot.id(), 0.0));
    }

    private List<Plan.Batch> batchesOnBoard(Standing standing) {
        Set<String> onBoard = new HashSet<>();
        standing.planters().values().forEach(planter -> planter.tank()
                .ifPresent(tank -> onBoard.addAll(tank.mix().batches())));
        standing.rigs().values().forEach(rig -> rig.mix().ifPresent(mix -> onBoard.addAll(mix.batches())));
        return plan.batches().stream()
                .filter(batch -> onBoard.contains(batch.id()))
                .toList();
    }
}

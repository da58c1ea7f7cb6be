package freshfurrow.cli.day;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Work;
import freshfurrow.model.text.FieldLabel;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Loads and batches of a plan by id, and what they have to do with one another. */
public final class PlanIndex {
    private final Plan plan;
    private final Map<String, Plan.Load> loads = new HashMap<>();
    private final Map<String, Plan.Batch> batches = new HashMap<>();
    private final Map<String, List<Plan.Load>> loadsByBatch = new HashMap<>();
    private final Map<String, NurseTank> tanks = new HashMap<>();
    private final Map<String, CompostHold> holds = new HashMap<>();

    public PlanIndex(Plan plan) {
        this.plan = plan;
        for (Plan.Load load : plan.loads()) {
            loads.put(load.id(), load);
            load.batches().forEach(batch -> loadsByBatch
                    .computeIfAbsent(batch, id -> new ArrayList<>())
                    .add(load));
        }
        plan.batches().forEach(batch -> batches.put(batch.id(), batch));
    }

    public Plan plan() {
        return plan;
    }

    /** What people call a place by: its id, and the name of a field that has another one. */
    public String label(String place) {
        String name = plan.season().names().get(place);
        return name == null ? place : FieldLabel.of(place, name);
    }

    /** Whether a field is fixed to a planter or a day. */
    public boolean isFixed(String field) {
        return plan.season().fixed().contains(field);
    }

    /**
     * The load of that id.
     *
     * @throws IllegalArgumentException when the plan has no such load
     */
    public Plan.Load load(String id) {
        return known(loads, id);
    }

    /**
     * The batch of that id.
     *
     * @throws IllegalArgumentException when the plan has no such batch
     */
    public Plan.Batch batch(String id) {
        return known(batches, id);
    }

    /**
     * What a planter or sprayer does to fields.
     *
     * @throws IllegalArgumentException when the plan has no such machine
     */
    public Work workOf(String machine) {
        return known(plan.planters(), machine).work();
    }

    /** The machine on whose sheet the work of a machine stands: the rig that it is mounted on, or itself. */
    public static String crewOf(Plan plan, String machine) {
        Plan.PlanterPlan planter = plan.planters().get(machine);
        return planter == null ? machine : planter.on().orElse(machine);
    }

    /** Whether a load is for a sprayer that is mounted on the rig that made it. */
    public boolean isForItself(Plan.Load load) {
        return crewOf(plan, load.planter()).equals(load.rig());
    }

    /**
     * How full a load makes its planter's tank, a share of one.
     *
     * @throws IllegalArgumentException when the plan has no such planter
     */
    public double shareOfTank(Plan.Load load) {
        return load.litres() / known(plan.planters(), load.planter()).tankL();
    }

    /**
     * The nurse tank of a rig.
     *
     * @throws IllegalArgumentException when the plan has no such rig
     */
    public NurseTank nurseTank(String rig) {
        return tanks.computeIfAbsent(rig, id -> NurseTank.of(plan, id));
    }

    /**
     * The compost that a rig has on board.
     *
     * @throws IllegalArgumentException when the plan has no such rig
     */
    public CompostHold compostHold(String rig) {
        return holds.computeIfAbsent(rig, id -> CompostHold.of(plan, id));
    }

    /** The earliest time by which a load that the batch is in has to be in the ground; empty when it is in none. */
    public Optional<LocalDateTime> useBy(Plan.Batch batch) {
        return loadsWith(batch.id()).stream().map(Plan.Load::deadline).min(Comparator.naturalOrder());
    }

    /** Ids of the loads that the batch goes into, in the order of their transfers. */
    public List<String> loadsOf(Plan.Batch batch) {
        return loadsWith(batch.id()).stream().map(Plan.Load::id).toList();
    }

    /** Water added to the concentrate of a load's batches, L; empty when a batch goes into other loads too. */
    public OptionalDouble makeUpWaterL(Plan.Load load) {
        if (load.batches().stream().anyMatch(batch -> loadsWith(batch).size() > 1)) {
            return OptionalDouble.empty();
        }
        double concentrateL = load.batches().stream()
                .mapToDouble(batch -> batch(batch).waterL())
                .sum();
        return OptionalDouble.of(Math.max(0, load.litres() - concentrateL));
    }

    /** Ids of the other loads that take from batches of this one, in the order of their transfers. */
    public List<String> sharers(Plan.Load load) {
        return load.batches().stream()
                .flatMap(batch -> loadsWith(batch).stream())
                .map(Plan.Load::id)
                .filter(id -> !id.equals(load.id()))
                .distinct()
                .toList();
    }

    private List<Plan.Load> loadsWith(String batch) {
        return loadsByBatch.getOrDefault(batch, List.of());
    }

    private static <T> T known(Map<String, T> byId, String id) {
        T found = byId.get(id);
        if (found == null) {
            throw new IllegalArgumentException("the plan speaks of " + id + ", which it does not have");
        }
        return found;
    }
}

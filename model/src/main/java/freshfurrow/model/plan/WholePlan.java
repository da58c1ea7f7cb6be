package freshfurrow.model.plan;

import static freshfurrow.model.quantity.Factors.DAY_S;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.LongStream;

/**
 * Whether a plan is whole in itself: the loads, batches and machines that it names are in it, ids are given once, batches that are made go into
 * a load, no amount is below zero, what
 * holds something is of some size, machines do only what their kind can do, and its times belong to one season.
 */
final class WholePlan implements PlanVisitor {
    /** Longest season, d, and the longest hold time behind it. */
    private static final int LONGEST_D = 400 + 7;

    /** The least that a file of three decimals tells from nothing. */
    private static final double LEAST_SIZE = 0.001;

    private final Path file;
    private final Plan plan;
    private final Set<String> loads = new HashSet<>();
    private final Set<String> batches = new HashSet<>();
    private final Set<String> usedBatches = new HashSet<>();
    private final LocalDateTime middle;

    private WholePlan(Path file, Plan plan) throws PlanFileException {
        this.file = file;
        this.plan = plan;
        middle = middle(plan);
    }

    /** @throws PlanFileException for the first thing that is wrong */
    static void check(Path file, Plan plan) throws PlanFileException {
        var whole = new WholePlan(file, plan);
        whole.names();
        PlanWalk.through(plan, whole);
    }

    private void names() throws PlanFileException {
        for (int i = 0; i < plan.loads().size(); i++) {
            once(
                    loads,
                    plan.loads().get(i).id(),
                    "load",
                    PlanWalk.at("loads", i).then(".id"));
            usedBatches.addAll(plan.loads().get(i).batches());
        }
        for (int i = 0; i < plan.batches().size(); i++) {
            once(
                    batches,
                    plan.batches().get(i).id(),
                    "batch",
                    PlanWalk.at("batches", i).then(".id"));
        }
        Set<String> unserved = new HashSet<>();
        for (int i = 0; i < plan.unserved().size(); i++) {
            once(
                    unserved,
                    plan.unserved().get(i).field(),
                    "unplanted field",
                    PlanWalk.at("unserved", i).then(".field"));
        }
        Set<String> listed = new HashSet<>();
        for (var planter : plan.planters().entrySet()) {
            List<String> fields = planter.getValue().fields();
            for (int i = 0; i < fields.size(); i++) {
                once(listed, fields.get(i), "field", PlanWalk.at("planters." + planter.getKey() + ".fields", i));
            }
        }
    }

    private void once(Set<String> seen, String id, String noun, Where where) throws PlanFileException {
        if (!seen.add(id)) {
            throw wrong(where, "the " + noun + " '" + id + "' is there twice");
        }
    }

    @Override
    public void name(Named kind, String id, Where where) throws PlanFileException {
        boolean known =
                switch (kind) {
                    case LOAD -> loads.contains(id);
                    case BATCH -> batches.contains(id);
                    case PLANTER -> plan.planters().containsKey(id);
                    case RIG -> plan.rigs().containsKey(id);
                    default -> true;
                };
        if (!known) {
            throw wrong(where, "the plan has no " + kind.noun() + " '" + id + "'");
        }
    }

    @Override
    public void figure(double figure, Where where) throws PlanFileException {
        if (!(figure >= 0)) {
            throw wrong(where, "expected 0 or more, found " + figure);
        }
    }

    @Override
    public void size(double size, Where where) throws PlanFileException {
        if (!(size >= LEAST_SIZE)) {
            throw wrong(where, "expected " + LEAST_SIZE + " or more, found " + size);
        }
    }

    @Override
    public void time(LocalDateTime time, Where where) throws PlanFileException {
        if (Math.abs(seconds(time) - seconds(middle)) > LONGEST_D * DAY_S) {
            throw wrong(
                    where,
                    PlanToJson.time(time) + " is more than " + LONGEST_D + " days from the middle of the plan, "
                            + middle.toLocalDate());
        }
    }

    @Override
    public void activity(Activity activity, Named machine, Where where) throws PlanFileException {
        if (activity.end().isBefore(activity.start())) {
            throw wrong(where.then(".end"), "it ends at " + activity.end() + ", before it starts");
        }
        if (activity instanceof Activity.Extract extract && !usedBatches.contains(extract.batch())) {
            throw wrong(where.then(".batch"), "the batch '" + extract.batch() + "' is not used in any load");
        }
        ActivityKind kind = activity.kind();
        boolean can = machine == Named.PLANTER ? kind.byPlanters() : kind.byRigs();
        if (!can) {
            throw wrong(where.then(".kind"), "no " + machine.noun() + " does '" + kind.key() + "'");
        }
    }

    /** Half of the plan's times come before it, so that a wrong time here and there does not move it far. */
    private static LocalDateTime middle(Plan plan) throws PlanFileException {
        LongStream.Builder all = LongStream.builder();
        PlanWalk.through(plan, new PlanVisitor() {
            @Override
            public void time(LocalDateTime time, Where where) {
                all.add(seconds(time));
            }
        });
        long[] times = all.build().toArray();
        Arrays.sort(times);
        return LocalDateTime.ofEpochSecond(times[times.length / 2], 0, ZoneOffset.UTC);
    }

    private static long seconds(LocalDateTime time) {
        return time.toEpochSecond(ZoneOffset.UTC);
    }

    private PlanFileException wrong(Where where, String reason) {
        return new PlanFileException(file, where.path(), reason, PlanFromJson.REMEDY);
    }
}

package freshfurrow.cli.day;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Mix;
import freshfurrow.model.season.Standing;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a plan of the rest of a season does with mix that was made before it begins. */
public sealed interface MixOrder {
    /** Id of the machine that has it on board. */
    String machine();

    /** By when it has to be in the ground. */
    LocalDateTime useBy();

    /** When the plan is done with it. */
    LocalDateTime done();

    /**
     * A planter applies it.
     *
     * @param fields in the order in which it does
     */
    record Apply(String machine, Plan.Load load, List<String> fields) implements MixOrder {
        public Apply {
            fields = List.copyOf(fields);
        }

        @Override
        public LocalDateTime useBy() {
            return load.deadline();
        }

        @Override
        public LocalDateTime done() {
            return load.lastDrop();
        }
    }

    /** A planter gives it up. */
    record DrainTank(String machine, Plan.Load load) implements MixOrder {
        @Override
        public LocalDateTime useBy() {
            return load.deadline();
        }

        @Override
        public LocalDateTime done() {
            return load.deadline();
        }
    }

    /**
     * A rig takes it to a planter.
     *
     * @param areaHa that it is enough for, ha
     */
    record Bring(String machine, double areaHa, LocalDateTime useBy, String planter, Activity.Transfer transfer)
            implements MixOrder {
        @Override
        public LocalDateTime done() {
            return transfer.end();
        }
    }

    /**
     * A rig gives it up.
     *
     * @param areaHa that it is enough for, ha
     * @param done by its use-by time, or before, when the plan needs the tank
     */
    record DrainRig(String machine, double areaHa, LocalDateTime useBy, LocalDateTime done) implements MixOrder {}

    /** Planters first; none for a plan of a whole season. */
    static List<MixOrder> of(Plan plan) {
        List<MixOrder> orders = new ArrayList<>();
        plan.start().ifPresent(start -> {
            start.standing().planters().forEach((id, planter) -> planter.tank()
                    .flatMap(tank -> inTank(plan, id, tank))
                    .ifPresent(orders::add));
            start.standing().rigs().forEach((id, rig) -> rig.mix()
                    .flatMap(mix -> onRig(plan, id, mix))
                    .ifPresent(orders::add));
        });
        return List.copyOf(orders);
    }

    /** Those that a crew has to know of on a date: from the one on which the plan begins to that on which it is done with the mix. */
    static List<MixOrder> on(Plan plan, LocalDate date) {
        return of(plan).stream()
                .filter(order -> plan.start().stream()
                        .noneMatch(start -> date.isBefore(start.now().toLocalDate())))
                .filter(order -> !date.isAfter(order.done().toLocalDate()))
                .toList();
    }

    private static Optional<MixOrder> inTank(Plan plan, String planter, Standing.Tank tank) {
        List<String> fields = Optional.ofNullable(plan.planters().get(planter)).stream()
                .flatMap(planned -> planned.activities().stream())
                .filter(activity ->
                        activity instanceof Activity.Plant plant && plant.load().equals(tank.load()))
                .map(activity -> ((Activity.Plant) activity).field())
                .distinct()
                .toList();
        return load(plan, tank.load())
                .map(load -> fields.isEmpty()
                        ? new DrainTank(PlanIndex.crewOf(plan, planter), load)
                        : new Apply(PlanIndex.crewOf(plan, planter), load, fields));
    }

    private static Optional<MixOrder> onRig(Plan plan, String rig, Mix mix) {
        Optional<Activity> next = Optional.ofNullable(plan.rigs().get(rig)).stream()
                .flatMap(planned -> planned.activities().stream())
                .filter(activity -> activity instanceof Activity.Transfer || activity instanceof Activity.Dump)
                .findFirst();
        if (next.isPresent() && next.get() instanceof Activity.Transfer transfer) {
            return load(plan, transfer.load())
                    .map(load -> new Bring(rig, mix.areaHa(), mix.deadline(), load.planter(), transfer));
        }
        LocalDateTime done =
                next.map(Activity::end).filter(mix.deadline()::isAfter).orElse(mix.deadline());
        return Optional.of(new DrainRig(rig, mix.areaHa(), mix.deadline(), done));
    }

    private static Optional<Plan.Load> load(Plan plan, String id) {
        return plan.loads().stream().filter(load -> load.id().equals(id)).findFirst();
    }
}

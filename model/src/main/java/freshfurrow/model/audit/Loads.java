package freshfurrow.model.audit;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Standing;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Every load: how much it is, how it gets into the planter, and that it is used in time. */
final class Loads {
    private final Evidence evidence;
    private final Map<String, List<Evidence.Done<Activity.Fill>>> fills;
    private final Map<String, List<Evidence.Done<Activity.Transfer>>> transfers;
    private final Map<String, List<Evidence.Done<Activity.Plant>>> plantings;

    Loads(Evidence evidence) {
        this.evidence = evidence;
        fills = evidence.allBy(Activity.Fill.class, Activity.Fill::load);
        transfers = evidence.allBy(Activity.Transfer.class, Activity.Transfer::load);
        plantings = evidence.allBy(Activity.Plant.class, Activity.Plant::load);
    }

    void check() {
        for (Plan.Load load : evidence.loads.values()) {
            amounts(load);
            evidence.carried.tank(load.id()).ifPresent(tank -> asItWas(load, tank));
            for (var transfer : transfers.getOrDefault(load.id(), List.of())) {
                transferTime(load, transfer.activity());
                fills.getOrDefault(load.id(), List.of())
                        .forEach(fill -> sameEvent(load, fill.activity(), transfer.activity()));
                load.batches().forEach(batch -> batchBefore(load, transfer.activity(), batch));
            }
            lastDrop(load);
            deadline(load);
        }
    }

    private void amounts(Plan.Load load) {
        if (!Evidence.same(load.litres(), load.appliedL() + load.dumpedL(), 3 * Evidence.ROUNDING)) {
            report(
                    Rule.LOAD_BALANCE,
                    load,
                    "it is " + Evidence.show(load.litres()) + " L, applied " + Evidence.show(load.appliedL())
                            + " L and dumped " + Evidence.show(load.dumpedL()) + " L");
        }
        var planter = evidence.planters.get(load.planter());
        if (planter != null
                && !(load.litres() > 0
                        && load.litres() <= planter.tankL() * (1 + Evidence.LEEWAY) + 2 * Evidence.ROUNDING)) {
            report(
                    Rule.TANK_CAPACITY,
                    load,
                    "it is " + Evidence.show(load.litres()) + " L, the tank of " + planter.id() + " holds "
                            + Evidence.show(planter.tankL()) + " L");
        }
        Optional<Recipe> recipe = evidence.recipeOf(load);
        if (recipe.isPresent()) {
            var pieces = plantings.getOrDefault(load.id(), List.of());
            double areaHa = pieces.stream()
                    .mapToDouble(done -> done.activity().areaHa())
                    .sum();
            double asked = areaHa * recipe.get().mixLPerHa();
            if (!Evidence.same(load.appliedL(), asked, (pieces.size() + 1) * 2 * Evidence.ROUNDING)) {
                report(
                        Rule.MIX_RATE,
                        load,
                        Evidence.show(areaHa) + " ha planted from it need " + Evidence.show(asked) + " L, applied are "
                                + Evidence.show(load.appliedL()) + " L");
            }
        }
    }

    private void asItWas(Plan.Load load, Standing.Tank tank) {
        double litres = evidence.recipeOf(load)
                .map(recipe -> tank.mix().areaHa() * recipe.mixLPerHa())
                .orElse(0.0);
        if (!(Evidence.same(load.litres(), litres, 3 * Evidence.ROUNDING)
                && load.recipe().equals(tank.mix().recipe()))) {
            report(
                    Rule.START,
                    load,
                    "it is " + Evidence.show(load.litres()) + " L of " + load.recipe() + ", in the tank were "
                            + Evidence.show(litres) + " L of "
                            + tank.mix().recipe());
        }
    }

    private void transferTime(Plan.Load load, Activity.Transfer transfer) {
        if (!Evidence.same(transfer.litres(), load.litres(), Evidence.ROUNDING)) {
            report(
                    Rule.LOAD_BALANCE,
                    load,
                    "it is " + Evidence.show(load.litres()) + " L, transferred are "
                            + Evidence.show(transfer.litres()));
        }
        var planter = evidence.planters.get(load.planter());
        var rig = evidence.rigs.get(load.rig());
        if (planter == null || rig == null) {
            return;
        }
        double asked = planter.fillSetupS() + (planter.on().isPresent() ? 0 : transfer.litres() / rig.transferLPerS());
        long taken = evidence.lasts(transfer);
        if (!(taken >= asked - Evidence.SECOND_ROUNDING && taken <= asked + 1 + Evidence.SECOND_ROUNDING)) {
            report(
                    Rule.TRANSFER_TIME,
                    load,
                    "setup and pumping take " + Evidence.show(asked) + " s, its transfer takes " + taken + " s");
        }
    }

    private void sameEvent(Plan.Load load, Activity.Fill fill, Activity.Transfer transfer) {
        if (!(fill.at().equals(transfer.at())
                && fill.start().equals(transfer.start())
                && fill.end().equals(transfer.end()))) {
            report(
                    Rule.FILL_AND_TRANSFER,
                    load,
                    "it is filled at " + fill.at() + " from " + fill.start() + " to " + fill.end()
                            + " and transferred at " + transfer.at() + " from " + transfer.start() + " to "
                            + transfer.end());
        }
    }

    private void batchBefore(Plan.Load load, Activity.Transfer transfer, String id) {
        Plan.Batch batch = evidence.batches.get(id);
        if (batch == null) {
            return;
        }
        if (!batch.rig().equals(load.rig())) {
            report(Rule.BATCH_BEFORE_LOAD, load, "its batch " + id + " is made by " + batch.rig());
        }
        if (batch.end().isAfter(transfer.start())) {
            report(
                    Rule.BATCH_BEFORE_LOAD,
                    load,
                    "its batch " + id + " ends at " + batch.end() + ", after its transfer starts");
        }
    }

    private void lastDrop(Plan.Load load) {
        long last = plantings.getOrDefault(load.id(), List.of()).stream()
                .mapToLong(done -> evidence.end(done.activity()))
                .max()
                .orElse(Long.MIN_VALUE);
        if (last == Long.MIN_VALUE && evidence.carried.tank(load.id()).isPresent()) {
            last = evidence.carried.now().map(evidence.calendar::seconds).orElse(last);
        }
        if (last != evidence.calendar.seconds(load.lastDrop())) {
            report(
                    Rule.LAST_DROP,
                    load,
                    last == Long.MIN_VALUE
                            ? "nothing is planted from it"
                            : "it says " + load.lastDrop() + ", but the last planting from it ends at another time");
        }
    }

    private void deadline(Plan.Load load) {
        Optional<Recipe> recipe = evidence.recipeOf(load);
        var oldest = load.batches().stream()
                .filter(evidence.batches::containsKey)
                .map(id -> evidence.batches.get(id).end())
                .min(Comparator.naturalOrder());
        if (recipe.isEmpty() || oldest.isEmpty()) {
            return;
        }
        long deadline = evidence.calendar.seconds(
                evidence.calendar.keepsUntil(oldest.get(), recipe.get().holdS()));
        if (deadline != evidence.calendar.seconds(load.deadline())) {
            report(
                    Rule.USE_BY,
                    load,
                    "it says " + load.deadline() + ", its oldest batch ends at " + oldest.get() + " and keeps for "
                            + recipe.get().holdS() + " s");
        }
        reserve(load, recipe.get(), oldest.get());
        for (var done : plantings.getOrDefault(load.id(), List.of())) {
            if (evidence.end(done.activity()) > deadline) {
                report(
                        Rule.FRESHNESS,
                        load,
                        "it is planted until " + done.activity().end() + ", its oldest batch ends at " + oldest.get()
                                + " and keeps for " + recipe.get().holdS() + " s");
            }
        }
    }

    /** What is in a mix that was made before the plan may be planted up to its use-by time. */
    private void reserve(Plan.Load load, Recipe recipe, LocalDateTime oldest) {
        boolean madeBefore = load.batches().stream().anyMatch(evidence.carried::isBatch);
        long plantBy =
                evidence.calendar.seconds(evidence.calendar.keepsUntil(oldest, recipe.holdS() - recipe.reserveS()));
        boolean less = evidence.calendar.passed(load.lastDrop(), load.deadline()) < recipe.reserveS();
        if (load.appliedL() > 0 && less != load.intoReserve()) {
            report(
                    Rule.RESERVE,
                    load,
                    "it says that it " + (less ? "leaves alone" : "uses up") + " some of its reserve of "
                            + recipe.reserveS() + " s, its last drop is planted at " + load.lastDrop()
                            + " and its use-by time is " + load.deadline());
        }
        if (!madeBefore && evidence.calendar.seconds(load.lastDrop()) > plantBy) {
            report(
                    Rule.RESERVE,
                    load,
                    "its last drop is planted at " + load.lastDrop() + ", its oldest batch ends at " + oldest
                            + ", keeps for " + recipe.holdS() + " s, and " + recipe.reserveS()
                            + " s of that are kept in hand");
        }
    }

    private void report(Rule rule, Plan.Load load, String what) {
        evidence.report(rule, "load " + load.id(), what);
    }
}

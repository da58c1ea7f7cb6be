package freshfurrow.model.audit;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.ActivityParts;
import freshfurrow.model.plan.Plan;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/** Whether the names in a plan stand for something of the season or of the plan, and its records are complete. */
final class References {
    private final Evidence evidence;

    References(Evidence evidence) {
        this.evidence = evidence;
    }

    void check() {
        namesInActivities();
        namesInRecords();
        namesThatStandTwice();
        loadRecords();
        batchRecords();
        figures();
    }

    private void namesInActivities() {
        evidence.plan.planters().keySet().forEach(id -> known(id, evidence.planters::containsKey, id, "planter"));
        evidence.plan.rigs().keySet().forEach(id -> known(id, evidence.rigs::containsKey, id, "rig"));
        for (Evidence.Done<Activity> done : evidence.activities) {
            done.activity().tell(new ActivityParts<RuntimeException>() {
                @Override
                public void name(ActivityParts.Name part, String id) {
                    known(part, id, done.where());
                }
            });
        }
    }

    private void known(ActivityParts.Name part, String id, String where) {
        switch (part) {
            case FROM, TO, AT, WATER_POINT -> known(id, evidence::isPlace, where, "place");
            case FIELD -> {
                known(id, evidence::isPlace, where, "place");
                known(id, evidence.fields::containsKey, where, "field");
            }
            case LOAD -> known(id, evidence.loads::containsKey, where, "load");
            case BATCH -> known(id, evidence.batches::containsKey, where, "batch");
            case LOT -> known(id, evidence.lots::containsKey, where, "compost lot");
        }
    }

    private void namesInRecords() {
        evidence.plan.planters().forEach((id, planter) -> planter.fields()
                .forEach(field -> known(field, evidence.fields::containsKey, "planting order of " + id, "field")));
        for (Plan.Load load : evidence.plan.loads()) {
            String where = "load " + load.id();
            known(load.planter(), evidence.planters::containsKey, where, "planter");
            known(load.rig(), evidence.rigs::containsKey, where, "rig");
            known(load.recipe(), evidence.recipes::containsKey, where, "recipe");
            load.batches().forEach(batch -> known(batch, evidence.batches::containsKey, where, "batch"));
        }
        for (Plan.Batch batch : evidence.plan.batches()) {
            String where = "batch " + batch.id();
            known(batch.rig(), evidence.rigs::containsKey, where, "rig");
            if (evidence.carried.isBatch(batch.id())) {
                continue;
            }
            batch.lots().keySet().forEach(lot -> known(lot, evidence::isLot, where, "compost lot"));
        }
        evidence.plan
                .unserved()
                .forEach(left -> known(left.field(), evidence.fields::containsKey, "unplanted fields", "field"));
    }

    private void known(String name, Predicate<String> exists, String where, String kind) {
        if (!exists.test(name)) {
            evidence.report(Rule.KNOWN_NAMES, where, "there is no " + kind + " '" + name + "'");
        }
    }

    private void namesThatStandTwice() {
        Plan plan = evidence.plan;
        once(plan.loads().stream().map(Plan.Load::id).toList(), "loads");
        once(plan.batches().stream().map(Plan.Batch::id).toList(), "batches");
        once(plan.unserved().stream().map(Plan.Unserved::field).toList(), "unplanted fields");
        once(
                plan.planters().values().stream()
                        .flatMap(planter -> planter.fields().stream())
                        .toList(),
                "lists of fields");
        plan.loads().forEach(load -> once(load.batches(), "load " + load.id()));
    }

    private void once(List<String> names, String where) {
        Set<String> seen = new HashSet<>();
        for (String name : names) {
            if (!seen.add(name)) {
                evidence.report(Rule.UNIQUE_NAMES, where, "'" + name + "' is there more than once");
            }
        }
    }

    private void loadRecords() {
        var fills = evidence.allBy(Activity.Fill.class, Activity.Fill::load);
        var transfers = evidence.allBy(Activity.Transfer.class, Activity.Transfer::load);
        evidence.loads.forEach((id, load) -> {
            if (evidence.carried.tank(id).isPresent()) {
                return;
            }
            onlyBy(load.planter(), fills.getOrDefault(id, List.of()), "load " + id, "fill");
            onlyBy(load.rig(), transfers.getOrDefault(id, List.of()), "load " + id, "transfer");
            if (load.batches().isEmpty()) {
                evidence.report(Rule.COMPLETE_RECORDS, "load " + id, "it has no batch");
            }
        });
    }

    private void batchRecords() {
        var extractions = evidence.allBy(Activity.Extract.class, Activity.Extract::batch);
        Set<String> used = new HashSet<>();
        evidence.plan.loads().forEach(load -> used.addAll(load.batches()));
        evidence.batches.forEach((id, batch) -> {
            if (evidence.carried.isBatch(id)) {
                return;
            }
            onlyBy(batch.rig(), extractions.getOrDefault(id, List.of()), "batch " + id, "extraction");
            if (!used.contains(id)) {
                evidence.report(Rule.COMPLETE_RECORDS, "batch " + id, "it is not used in any load");
            }
        });
    }

    private <A extends Activity> void onlyBy(String machine, List<Evidence.Done<A>> found, String where, String kind) {
        if (found.size() != 1) {
            evidence.report(Rule.COMPLETE_RECORDS, where, "it has " + found.size() + " activities of kind " + kind);
        }
        for (Evidence.Done<A> done : found) {
            if (!done.machine().equals(machine)) {
                evidence.report(
                        Rule.COMPLETE_RECORDS,
                        where,
                        "its " + kind + " is by " + done.machine() + ", not by " + machine);
            }
        }
    }

    private void figures() {
        Map<String, Double> figures = new LinkedHashMap<>();
        Plan plan = evidence.plan;
        plan.planters().forEach((id, planter) -> figures.put("tank of " + id, planter.tankL()));
        for (Evidence.Done<Activity> done : evidence.activities) {
            done.activity().tell(new ActivityParts<RuntimeException>() {
                @Override
                public void amount(ActivityParts.Amount part, double amount) {
                    figures.merge(done.where(), amount, References::worse);
                }
            });
        }
        for (Plan.Load load : plan.loads()) {
            figures.put("litres of load " + load.id(), load.litres());
            figures.put("applied litres of load " + load.id(), load.appliedL());
            figures.put("dumped litres of load " + load.id(), load.dumpedL());
        }
        for (Plan.Batch batch : plan.batches()) {
            figures.put("compost of batch " + batch.id(), batch.compostKg());
            figures.put("water of batch " + batch.id(), batch.waterL());
            batch.lots().forEach((lot, kg) -> figures.put("lot " + lot + " of batch " + batch.id(), kg));
        }
        plan.unserved().forEach(left -> figures.put("unplanted area of " + left.field(), left.areaHa()));
        figures.forEach((where, figure) -> {
            if (!(figure >= 0 && Double.isFinite(figure))) {
                evidence.report(Rule.FIGURES, where, Evidence.show(figure) + " is not a valid figure");
            }
        });
    }

    private static double worse(double one, double other) {
        return one >= 0 && Double.isFinite(one) ? other : one;
    }
}

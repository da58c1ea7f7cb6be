package freshfurrow.model.plan;

import freshfurrow.model.plan.ActivityParts.Amount;
import freshfurrow.model.plan.ActivityParts.Name;
import freshfurrow.model.plan.PlanVisitor.Named;
import freshfurrow.model.plan.PlanVisitor.Where;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** Goes through a plan in the order of its file and shows a visitor every name, figure, time and activity. */
final class PlanWalk {
    private final PlanVisitor visitor;

    private PlanWalk(PlanVisitor visitor) {
        this.visitor = visitor;
    }

    static void through(Plan plan, PlanVisitor visitor) throws PlanFileException {
        var walk = new PlanWalk(visitor);
        for (String field : plan.season().fixed()) {
            visitor.name(Named.FIELD, field, () -> "season.fixed");
        }
        for (String field : plan.season().names().keySet()) {
            visitor.name(Named.FIELD, field, () -> "season.names");
        }
        walk.totals(plan.totals());
        walk.machines(plan);
        for (int i = 0; i < plan.loads().size(); i++) {
            walk.load(plan.loads().get(i), at("loads", i));
        }
        for (int i = 0; i < plan.batches().size(); i++) {
            walk.batch(plan.batches().get(i), at("batches", i));
        }
        for (int i = 0; i < plan.unserved().size(); i++) {
            Where where = at("unserved", i);
            visitor.name(Named.LEFT_FIELD, plan.unserved().get(i).field(), where.then(".field"));
            visitor.figure(plan.unserved().get(i).areaHa(), where.then(".areaHa"));
        }
        if (plan.chances().isPresent()) {
            walk.chances(plan.chances().get());
        }
        if (plan.start().isPresent()) {
            new StartWalk(visitor, walk).through(plan.start().get());
        }
    }

    private void chances(Chances chances) throws PlanFileException {
        for (String load : chances.stale().keySet()) {
            visitor.name(Named.LOAD, load, () -> "chances.stale");
        }
    }

    /** An entry of a list, counted from 0. */
    static Where at(String list, int index) {
        return () -> list + "[" + index + "]";
    }

    private void totals(Plan.Totals totals) throws PlanFileException {
        visitor.figure(totals.areaHa(), () -> "totals.areaHa");
        visitor.figure(totals.untreatedHa(), () -> "totals.untreatedHa");
        visitor.figure(totals.unservedHa(), () -> "totals.unservedHa");
        visitor.figure(totals.lateHaDays(), () -> "totals.lateHaDays");
        visitor.figure(totals.planterFills(), () -> "totals.planterFills");
        visitor.figure(totals.waterTrips(), () -> "totals.waterTrips");
        visitor.figure(totals.compostTrips(), () -> "totals.compostTrips");
        visitor.figure(totals.batches(), () -> "totals.batches");
        visitor.figure(totals.compostKg(), () -> "totals.compostKg");
        visitor.figure(totals.dumpedL(), () -> "totals.dumpedL");
        visitor.figure(totals.waitMin(), () -> "totals.waitMin");
        visitor.figure(totals.idleMin(), () -> "totals.idleMin");
        visitor.figure(totals.overtimeMin(), () -> "totals.overtimeMin");
        visitor.figure(totals.driveKm(), () -> "totals.driveKm");
        visitor.time(totals.finish(), () -> "totals.finish");
    }

    private void machines(Plan plan) throws PlanFileException {
        for (Map.Entry<String, Plan.PlanterPlan> entry : plan.planters().entrySet()) {
            Where where = () -> "planters." + entry.getKey();
            visitor.name(Named.PLANTER, entry.getKey(), where);
            visitor.size(entry.getValue().tankL(), where.then(".tankL"));
            names(Named.LEFT_FIELD, entry.getValue().fields(), where.then(".fields"));
            names(Named.LEFT_FIELD, entry.getValue().withoutExtract(), where.then(".withoutExtract"));
            activities(entry.getValue().activities(), Named.PLANTER, where.then(".activities"));
        }
        for (Map.Entry<String, Plan.RigPlan> entry : plan.rigs().entrySet()) {
            Where where = () -> "rigs." + entry.getKey();
            Plan.RigPlan rig = entry.getValue();
            visitor.name(Named.RIG, entry.getKey(), where);
            size(rig.nurseTankL(), where.then(".nurseTankL"));
            size(rig.payloadKg(), where.then(".payloadKg"));
            size(rig.bucketKg(), where.then(".bucketKg"));
            activities(rig.activities(), Named.RIG, where.then(".activities"));
        }
    }

    private void size(OptionalDouble size, Where where) throws PlanFileException {
        if (size.isPresent()) {
            visitor.size(size.getAsDouble(), where);
        }
    }

    private void activities(List<Activity> activities, Named machine, Where list) throws PlanFileException {
        for (int i = 0; i < activities.size(); i++) {
            int index = i;
            activity(activities.get(i), machine, () -> list.path() + "[" + index + "]");
        }
    }

    private void activity(Activity activity, Named machine, Where where) throws PlanFileException {
        visitor.time(activity.start(), where.then(".start"));
        visitor.time(activity.end(), where.then(".end"));
        visitor.activity(activity, machine, where);
        activity.tell(new ActivityParts<PlanFileException>() {
            @Override
            public void name(Name part, String id) throws PlanFileException {
                visitor.name(part.named(), id, where.then("." + part.key()));
            }

            @Override
            public void amount(Amount part, double amount) throws PlanFileException {
                visitor.figure(amount, where.then("." + part.key()));
            }
        });
    }

    private void load(Plan.Load load, Where where) throws PlanFileException {
        visitor.name(Named.PLANTER, load.planter(), where.then(".planter"));
        visitor.name(Named.RIG, load.rig(), where.then(".rig"));
        visitor.name(Named.RECIPE, load.recipe(), where.then(".recipe"));
        visitor.figure(load.litres(), where.then(".litres"));
        names(Named.BATCH, load.batches(), where.then(".batches"));
        visitor.figure(load.appliedL(), where.then(".appliedL"));
        visitor.figure(load.dumpedL(), where.then(".dumpedL"));
        visitor.time(load.deadline(), where.then(".deadline"));
        visitor.time(load.lastDrop(), where.then(".lastDrop"));
    }

    void batch(Plan.Batch batch, Where where) throws PlanFileException {
        visitor.name(Named.RIG, batch.rig(), where.then(".rig"));
        visitor.time(batch.start(), where.then(".start"));
        visitor.time(batch.end(), where.then(".end"));
        visitor.figure(batch.compostKg(), where.then(".compostKg"));
        visitor.figure(batch.waterL(), where.then(".waterL"));
        for (Map.Entry<String, Double> lot : batch.lots().entrySet()) {
            visitor.name(Named.LOT, lot.getKey(), where.then(".lots"));
            visitor.figure(lot.getValue(), where.then(".lots." + lot.getKey()));
        }
    }

    void names(Named kind, List<String> ids, Where list) throws PlanFileException {
        for (int i = 0; i < ids.size(); i++) {
            int index = i;
            visitor.name(kind, ids.get(i), () -> list.path() + "[" + index + "]");
        }
    }
}

package freshfurrow.model.audit;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanStart;
import freshfurrow.model.season.Planter;
import freshfurrow.model.season.Rig;
import java.util.OptionalDouble;

/** Whether what a plan tells of its season is so. */
final class SeasonFacts {
    private final Evidence evidence;

    SeasonFacts(Evidence evidence) {
        this.evidence = evidence;
    }

    void check() {
        String name = evidence.plan.season().name();
        if (!name.equals(evidence.season.name())) {
            report("season", "the plan is of '" + name + "', not of '" + evidence.season.name() + "'");
        }
        evidence.planters.forEach(this::planter);
        evidence.rigs.forEach(this::rig);
        evidence.plan.season().names().forEach(this::fieldName);
        if (!evidence.plan.start().map(PlanStart::standing).equals(evidence.season.standing())) {
            evidence.report(Rule.START, "start", "machines stand otherwise than the plan says when it begins");
        }
    }

    private void planter(String id, Planter planter) {
        Plan.PlanterPlan its = evidence.plan.planters().get(id);
        if (its == null) {
            report(id, "the plan has no such planter");
        } else {
            same(id, "its tank holds", " L", OptionalDouble.of(planter.tankL()), OptionalDouble.of(its.tankL()));
        }
    }

    /** A plan made before rigs had figures has none, which is right. */
    private void rig(String id, Rig rig) {
        Plan.RigPlan its = evidence.plan.rigs().get(id);
        if (its == null) {
            report(id, "the plan has no such rig");
            return;
        }
        same(id, "its nurse tank holds", " L", OptionalDouble.of(rig.nurseTankL()), its.nurseTankL());
        same(id, "its payload is", " kg", rig.payloadKg(), its.payloadKg());
        same(id, "its bucket holds", " kg", OptionalDouble.of(rig.bucketKg()), its.bucketKg());
    }

    private void same(String where, String what, String unit, OptionalDouble season, OptionalDouble plan) {
        if (plan.isPresent()
                && (season.isEmpty() || !Evidence.same(plan.getAsDouble(), season.getAsDouble(), Evidence.ROUNDING))) {
            String known = season.isPresent() ? Evidence.show(season.getAsDouble()) + unit : "not known";
            report(where, what + " " + known + ", the plan says " + Evidence.show(plan.getAsDouble()) + unit);
        }
    }

    private void fieldName(String id, String name) {
        var field = evidence.fields.get(id);
        if (field == null || !field.name().equals(name)) {
            report("field " + id, "the plan calls it '" + name + "', the season does not");
        }
    }

    private void report(String where, String what) {
        evidence.report(Rule.SEASON, where, what);
    }
}

package freshfurrow.model.audit;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanStart;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Fixed;
import freshfurrow.model.season.Rig;
import java.util.List;
import java.util.Map;
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
        names();
        fixed();
        if (!evidence.plan.start().map(PlanStart::standing).equals(evidence.season.standing())) {
            evidence.report(Rule.START, "start", "machines are not where the plan says when it starts");
        }
    }

    private void planter(String id, Applicator planter) {
        Plan.PlanterPlan its = evidence.plan.planters().get(id);
        if (its == null) {
            report(id, "the plan has no such planter");
        } else {
            if (its.work() != planter.work()) {
                report(
                        id,
                        "the season has it to " + planter.work().key() + ", the plan to "
                                + its.work().key());
            }
            if (!its.on().equals(planter.on())) {
                report(
                        id,
                        "the season has it on " + planter.on().orElse("no rig") + ", the plan on "
                                + its.on().orElse("no rig"));
            }
            same(id, "its tank holds", " L", OptionalDouble.of(planter.tankL()), OptionalDouble.of(its.tankL()));
        }
    }

    /** A plan made before rigs had figures and fields had names has neither, which is right. */
    private boolean tellsFigures() {
        return evidence.plan.rigs().values().stream()
                .anyMatch(rig -> rig.nurseTankL().isPresent()
                        || rig.payloadKg().isPresent()
                        || rig.bucketKg().isPresent());
    }

    private void names() {
        Map<String, String> names = evidence.plan.season().names();
        names.forEach(this::fieldName);
        if (tellsFigures() || !names.isEmpty()) {
            evidence.fields.values().stream()
                    .filter(field -> !field.name().equals(field.id()) && !names.containsKey(field.id()))
                    .forEach(field -> report(
                            "field " + field.id(), "the season calls it '" + field.name() + "', the plan does not"));
        }
    }

    private void fixed() {
        List<String> fixed = evidence.season.fields().stream()
                .filter(field -> !field.fixed().equals(Fixed.NOT))
                .map(Field::id)
                .toList();
        if (!fixed.equals(evidence.plan.season().fixed())) {
            report(
                    "fixed",
                    "the season fixes " + fixed + ", the plan says "
                            + evidence.plan.season().fixed());
        }
    }

    private void rig(String id, Rig rig) {
        Plan.RigPlan its = evidence.plan.rigs().get(id);
        if (its == null) {
            report(id, "the plan has no such rig");
            return;
        }
        same(id, "its nurse tank holds", " L", OptionalDouble.of(rig.nurseTankL()), its.nurseTankL());
        same(id, "its payload is", " kg", rig.payloadKg(), its.payloadKg());
        // plans once assumed a weight where the season gives none
        if (rig.bucketKg().isPresent()) {
            same(id, "its bucket holds", " kg", rig.bucketKg(), its.bucketKg());
        }
    }

    private void same(String where, String what, String unit, OptionalDouble season, OptionalDouble plan) {
        if (plan.isEmpty() && season.isPresent() && tellsFigures()) {
            report(where, what + " " + Evidence.show(season.getAsDouble()) + unit + ", the plan does not say");
        } else if (plan.isPresent()
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

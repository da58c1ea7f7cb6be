package freshfurrow.model.audit;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.Resource;
import java.util.EnumSet;
import java.util.Set;

/** Whether what a plan says of other plans, and of what holds it back, goes together with its own figures. */
final class Bounds {
    private final Evidence evidence;
    private final Plan plan;

    Bounds(Evidence evidence) {
        this.evidence = evidence;
        plan = evidence.plan;
    }

    void check() {
        plan.bounds().ifPresent(this::bounds);
        limits();
    }

    private void bounds(Plan.Bounds bounds) {
        Plan.Totals totals = plan.totals();
        notBeaten("planterFills", totals.planterFills(), bounds.planterFills(), 0);
        notBeaten("waterTrips", totals.waterTrips(), bounds.waterTrips(), 0);
        notBeaten("unservedHa", totals.unservedHa(), bounds.unservedHa(), Evidence.AREA_ROUNDING_HA);
        notBeaten("lateHaDays", totals.lateHaDays(), bounds.lateHaDays(), Evidence.AREA_ROUNDING_HA);
        notBeaten("medium", -(double) plan.score().medium(), -(double) bounds.medium(), 0);
        notBeaten("effortMin", -(double) plan.score().soft(), (double) bounds.effortMin(), 0);
        if (bounds.provedBest() && bounds.medium() != plan.score().medium()) {
            evidence.report(
                    Rule.PROVEN_BEST,
                    "medium",
                    "the best possible has " + bounds.medium() + ", the plan has "
                            + plan.score().medium());
        }
    }

    private void notBeaten(String figure, double value, double bound, double tolerance) {
        if (value < bound - tolerance) {
            evidence.report(
                    Rule.BOUND,
                    figure,
                    "the plan has " + Evidence.show(value) + ", no plan is said to have less than "
                            + Evidence.show(bound));
        }
    }

    private void limits() {
        Set<Resource> told = EnumSet.noneOf(Resource.class);
        for (Plan.Limit limit : plan.limits()) {
            String resource = limit.resource().toString();
            if (!told.add(limit.resource())) {
                evidence.report(Rule.BOTTLENECKS, resource, "it is named twice");
            }
            if (limit.shareOfLate() > 0 && plan.harm() == 0) {
                evidence.report(Rule.BOTTLENECKS, resource, "lateness would shrink, but nothing is late");
            }
            if (limit.shareOfWait() > 0 && plan.totals().waitMin() == 0) {
                evidence.report(Rule.BOTTLENECKS, resource, "waiting would shrink, but nobody waits");
            }
        }
        if (!told.isEmpty() && told.size() < Resource.values().length) {
            evidence.report(Rule.BOTTLENECKS, "limits", "only " + told + " are named");
        }
    }
}

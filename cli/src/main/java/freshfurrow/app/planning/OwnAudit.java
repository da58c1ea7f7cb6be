package freshfurrow.app.planning;

import freshfurrow.app.refusal.PlanningRefusal;
import freshfurrow.app.refusal.Refused;
import freshfurrow.model.audit.Audit;
import freshfurrow.model.audit.Finding;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Season;
import java.util.List;

/** Holds a plan against its season before it is written. */
final class OwnAudit {
    private OwnAudit() {}

    /**
     * Lets a plan pass that holds.
     *
     * @param again whether it follows another plan
     * @throws Refused when the plan breaks a rule
     */
    static void pass(Season season, Plan plan, boolean again) {
        List<Finding> findings = Audit.check(season, plan);
        if (!findings.isEmpty()) {
            throw new Refused(new PlanningRefusal.BrokenPlan(findings, again));
        }
    }

    /**
     * Lets a plan pass that holds, and goes out from one of the season as it was before.
     *
     * @throws Refused when what is under way breaks a rule of the season as it is now
     */
    static void passAfterChange(Season season, Plan plan) {
        List<Finding> findings = Audit.check(season, plan);
        if (!findings.isEmpty()) {
            throw new Refused(new PlanningRefusal.MisfitChange(findings));
        }
    }
}

package freshfurrow.app.planning;

import freshfurrow.cli.command.Refusal;
import freshfurrow.cli.text.AuditReport;
import freshfurrow.model.audit.Audit;
import freshfurrow.model.audit.Finding;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Season;
import java.util.ArrayList;
import java.util.List;

/** Holds a plan against its season before it is written. */
public final class OwnAudit {
    private OwnAudit() {}

    /**
     * Lets a plan pass that holds.
     *
     * @param evidence files of the user that a report of the error needs
     * @throws Refusal when the plan breaks a rule
     */
    public static void pass(Season season, Plan plan, String evidence) {
        List<Finding> findings = Audit.check(season, plan);
        if (!findings.isEmpty()) {
            List<String> lines = new ArrayList<>();
            lines.add("The plan breaks rules of its own season, so it is not written. This is an error of the program,"
                    + " not of your files; please report it with your " + evidence + ".");
            findings.forEach(finding -> lines.add(AuditReport.line(finding)));
            throw new Refusal(lines);
        }
    }
}

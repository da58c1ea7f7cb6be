package freshfurrow.cli.words;

import freshfurrow.app.refusal.PlanRefusal;
import freshfurrow.cli.text.AuditReport;
import freshfurrow.model.read.Nearest;
import java.util.List;

/** That a plan does not answer what it is asked. */
final class PlanWords implements PlanRefusal.Visitor<String> {
    private static final int MOST_NAMED = 10;

    @Override
    public String visit(PlanRefusal.NoWork refusal) {
        return "The plan has no work on any day.";
    }

    @Override
    public String visit(PlanRefusal.NoWorkOn refusal) {
        return "The plan has no work on " + refusal.day() + "; it runs from " + refusal.first() + " to "
                + refusal.last() + ".";
    }

    @Override
    public String visit(PlanRefusal.NoMoreWork refusal) {
        return "The plan has no work from today, " + refusal.today() + ", on; it runs from " + refusal.first() + " to "
                + refusal.last() + ". Give a date to see one of its days.";
    }

    @Override
    public String visit(PlanRefusal.NoField refusal) {
        return "The season has no field " + refusal.field() + "; "
                + Nearest.to(refusal.field(), refusal.known())
                        .map(near -> "did you mean " + near + "?")
                        .orElseGet(() -> "it has " + few(refusal.known()));
    }

    @Override
    public String visit(PlanRefusal.PlantedBefore refusal) {
        return refusal.field() + " was finished before this plan starts; 'freshfurrow trace' has its record";
    }

    @Override
    public String visit(PlanRefusal.Unplayable refusal) {
        return refusal.plan() + ": " + refusal.reason() + "; make a new plan with 'freshfurrow plan'";
    }

    @Override
    public String visit(PlanRefusal.BeginsInAnotherSeason refusal) {
        return AuditReport.ofAnotherSeason(OriginText.clause(refusal.plan(), refusal.season(), refusal.source()));
    }

    private static String few(List<String> ids) {
        return String.join(", ", ids.subList(0, Math.min(MOST_NAMED, ids.size())))
                + (ids.size() > MOST_NAMED ? " and " + (ids.size() - MOST_NAMED) + " more" : "");
    }

    @Override
    public String visit(PlanRefusal.NotForMachine refusal) {
        return refusal.field() + " is not for " + refusal.machine() + ": its season file names other machines for it";
    }

    @Override
    public String visit(PlanRefusal.BeforeWindow refusal) {
        return "The window of " + refusal.field() + " begins on " + refusal.first() + ", after " + refusal.day();
    }

    @Override
    public String visit(PlanRefusal.ClosedDay refusal) {
        return "No machine works on " + refusal.day();
    }

    @Override
    public String visit(PlanRefusal.NoCompostYet refusal) {
        return "There is no compost on hand on " + refusal.day();
    }
}

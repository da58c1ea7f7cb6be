package freshfurrow.cli.words;

import freshfurrow.app.refusal.PlanningRefusal;
import freshfurrow.cli.text.AuditReport;
import freshfurrow.cli.text.WorkWords;
import java.util.List;
import java.util.stream.Stream;

/** That a season is not planned, or not planned again. */
final class PlanningWords implements PlanningRefusal.Visitor<List<String>> {
    @Override
    public List<String> visit(PlanningRefusal.NoTime refusal) {
        return List.of("Today is outside the season (" + refusal.first() + " to " + refusal.last()
                + "); give the time with --now, like --now 2027-05-03T14:00");
    }

    @Override
    public List<String> visit(PlanningRefusal.OutOfSeason refusal) {
        return List.of(refusal.now() + " is outside the season (" + refusal.first() + " to " + refusal.last()
                + "); give another time with --now");
    }

    @Override
    public List<String> visit(PlanningRefusal.PlanBeginsLater refusal) {
        return List.of(refusal.plan() + ": it starts at " + refusal.begins() + ", after " + refusal.now()
                + "; give a later time with --now, or name an earlier plan with --plan");
    }

    @Override
    public List<String> visit(PlanningRefusal.UnknownMachine refusal) {
        return List.of("--down: there is no " + new WorkWords(refusal.works()).machineOrRig() + " '" + refusal.id()
                + "'; the season has "
                + String.join(", ", refusal.known()));
    }

    @Override
    public List<String> visit(PlanningRefusal.UnknownLot refusal) {
        return List.of("--spoiled: there is no lot '" + refusal.id() + "'; the season has "
                + String.join(", ", refusal.known()));
    }

    @Override
    public List<String> visit(PlanningRefusal.BrokenPlan refusal) {
        String evidence = refusal.again() ? "season file, plan and log" : "season file";
        return Stream.concat(
                        Stream.of(
                                "The plan breaks rules of its own season, so it is not written. This is an error in the"
                                        + " program, not in your files; please report it with your " + evidence + "."),
                        refusal.findings().stream().map(AuditReport::line))
                .toList();
    }

    @Override
    public List<String> visit(PlanningRefusal.SeasonChanged refusal) {
        return List.of(
                "The season was changed since this plan was made, so it was not taken; replan, or make a new plan");
    }

    @Override
    public List<String> visit(PlanningRefusal.PlanChanged refusal) {
        return List.of(
                refusal.newest()
                        + ": another plan was written here since this one was made, so this one was not taken; replan, or make a new plan");
    }

    @Override
    public List<String> visit(PlanningRefusal.MisfitChange refusal) {
        return Stream.concat(
                        Stream.of(
                                "The season file was changed so that it does not fit what is under way, so the plan is not"
                                        + " written; change it back until that is done, or make a new plan."),
                        refusal.findings().stream().map(AuditReport::line))
                .toList();
    }
}

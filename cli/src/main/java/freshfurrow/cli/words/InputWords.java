package freshfurrow.cli.words;

import freshfurrow.app.refusal.InputRefusal;
import freshfurrow.app.refusal.SeasonPart;
import freshfurrow.model.read.ProblemLines;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** That what was named cannot be used. */
final class InputWords implements InputRefusal.Visitor<List<String>> {
    @Override
    public List<String> visit(InputRefusal.ProblemsFound refusal) {
        return ProblemLines.of(refusal.problems());
    }

    @Override
    public List<String> visit(InputRefusal.UnreadablePlan refusal) {
        return List.of(refusal.problem());
    }

    @Override
    public List<String> visit(InputRefusal.NoPlanFile refusal) {
        return List.of(refusal.file() + ": is not a plan file");
    }

    @Override
    public List<String> visit(InputRefusal.PlanOfAnotherSeason refusal) {
        return List.of(refusal.plan() + ": this is not a plan of " + refusal.season()
                + " as it is now (different checksum); name the plan that was made from it, or its variants with"
                + " --variant FILE, or make a new plan with 'freshfurrow plan'");
    }

    @Override
    public List<String> visit(InputRefusal.SeasonOfAnotherPlan refusal) {
        return List.of(refusal.season() + ": this is not what " + refusal.plan()
                + " was made from (different checksum);"
                + " make a new plan, or name that season with --season SEASON, and its variants with --variant FILE");
    }

    @Override
    public List<String> visit(InputRefusal.SeasonNotFound refusal) {
        return List.of(refusal.plan() + ": its season is missing, neither "
                + refusal.places().stream().map(Path::toString).collect(Collectors.joining(" nor "))
                + "; name it with --season SEASON");
    }

    @Override
    public List<String> visit(InputRefusal.ImpossibleStart refusal) {
        return List.of(refusal.plan() + ": start: " + refusal.reason() + "; make it again with 'freshfurrow replan'");
    }

    @Override
    public List<String> visit(InputRefusal.UnreadablePlans refusal) {
        return List.of(refusal.folder() + ": cannot be read (" + refusal.reason() + ")");
    }

    @Override
    public List<String> visit(InputRefusal.NoLog refusal) {
        return List.of(refusal.log() + ": there is no such file; name the season's log with --log FILE");
    }

    @Override
    public List<String> visit(InputRefusal.Unknown refusal) {
        String noun = noun(refusal.part());
        return List.of("--" + noun + ": the season has no " + noun + " " + refusal.id() + "; it has "
                + String.join(", ", refusal.known()));
    }

    @Override
    public List<String> visit(InputRefusal.Undecided refusal) {
        String noun = noun(refusal.part());
        return List.of("The season has " + refusal.known().size() + " " + noun + "s: "
                + String.join(", ", refusal.known()) + "; choose one with --" + noun);
    }

    /** The name of its option, too. */
    private static String noun(SeasonPart part) {
        return part.name().toLowerCase(Locale.ROOT);
    }
}

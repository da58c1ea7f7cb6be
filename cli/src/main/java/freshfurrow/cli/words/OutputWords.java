package freshfurrow.cli.words;

import freshfurrow.app.refusal.OutputRefusal;
import freshfurrow.app.refusal.OutputRefusal.Obstruction;
import freshfurrow.app.refusal.OutputRefusal.Unwritten;
import java.util.List;

/** That files are not written. */
final class OutputWords implements OutputRefusal.Visitor<List<String>> {
    @Override
    public List<String> visit(OutputRefusal.Obstructed refusal) {
        return refusal.obstructions().stream()
                .map(one -> line(one, refusal.unwritten()))
                .toList();
    }

    @Override
    public List<String> visit(OutputRefusal.Unwritable refusal) {
        return List.of(refusal.path() + ": cannot be written (" + refusal.reason() + "), so "
                + what(refusal.unwritten()) + "; " + elsewhere(refusal.unwritten()));
    }

    @Override
    public List<String> visit(OutputRefusal.PlanTooLarge refusal) {
        return List.of("The plan has " + refusal.megabytes()
                + " MB, too many to be read again, so it is not written; split the season into several,"
                + " by machines.");
    }

    @Override
    public List<String> visit(OutputRefusal.NoCalendar refusal) {
        return List.of(refusal.file() + ": is not a calendar of a plan, so it is not replaced;"
                + " move it away, or write elsewhere with --out");
    }

    @Override
    public List<String> visit(OutputRefusal.UnreadableCalendar refusal) {
        return List.of(refusal.file() + ": cannot be read (" + refusal.reason() + "); check its permissions");
    }

    private static String line(Obstruction obstruction, Unwritten unwritten) {
        String reason = obstruction.file() + ": " + obstruction.obstacle().words() + ", so " + what(unwritten) + "; ";
        return switch (obstruction.obstacle()) {
            case THERE ->
                unwritten == Unwritten.SEASON
                        ? reason + elsewhere(unwritten)
                        : reason + "replace it with --force, or " + elsewhere(unwritten);
            case LINK, NO_ORDINARY_FILE -> reason + "move it away, or " + elsewhere(unwritten);
        };
    }

    private static String what(Unwritten unwritten) {
        return switch (unwritten) {
            case FILES, SEASON -> "nothing was written";
            case PLANNING -> "nothing was planned";
            case PLAN -> "the new plan was not written";
            case REPLAN -> "the old plan is still there";
        };
    }

    private static String elsewhere(Unwritten unwritten) {
        return switch (unwritten) {
            case SEASON -> "begin a season in another folder";
            case FILES -> "write elsewhere with --out";
            case PLANNING -> "write elsewhere with --out DIR";
            case PLAN -> "run 'freshfurrow plan' again with another --out DIR";
            case REPLAN -> "run 'freshfurrow replan' again with another --out DIR";
        };
    }
}

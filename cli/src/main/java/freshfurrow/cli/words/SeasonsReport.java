package freshfurrow.cli.words;

import freshfurrow.app.seasons.SeasonOutcome;
import freshfurrow.cli.text.PlanTotals;
import java.util.List;
import java.util.stream.Collectors;

/** What is told of many seasons that are planned: a line for each, and how many there were of each kind. */
public final class SeasonsReport {
    private int made;
    private int kept;
    private int refused;

    /** The line of a season, which is counted. */
    public String line(SeasonOutcome outcome) {
        if (outcome instanceof SeasonOutcome.Made done) {
            made++;
            return done.season() + ": " + totals(PlanTotals.of(done.planned().plan()));
        }
        if (outcome instanceof SeasonOutcome.NotPlanned not) {
            refused++;
            List<String> lines = RefusalWords.lines(not.refusal());
            return not.season() + ": refused: " + lines.get(0)
                    + (lines.size() == 1 ? "" : " (and " + (lines.size() - 1) + " more)");
        }
        if (outcome instanceof SeasonOutcome.Outdated outdated) {
            refused++;
            return outdated.season() + ": refused: " + outdated.plan()
                    + " was made from it before it was changed; replace it with --force";
        }
        kept++;
        return outcome.season() + ": has a plan already";
    }

    /** How many seasons there were. */
    public String sum() {
        return made + " planned, " + kept + " had a plan already, " + refused + " refused";
    }

    public boolean isAnyRefused() {
        return refused > 0;
    }

    /** What was done and not done, as the plan itself is told of. */
    private static String totals(PlanTotals totals) {
        return totals.lines().stream()
                .limit(3)
                .map(line -> line.name() + " " + line.figure())
                .collect(Collectors.joining("; "));
    }
}

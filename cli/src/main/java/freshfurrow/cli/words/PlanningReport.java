package freshfurrow.cli.words;

import freshfurrow.app.output.PageOutcome;
import freshfurrow.app.planning.Planned;
import freshfurrow.app.planning.PlanningEnd;
import freshfurrow.app.planning.Replanned;
import freshfurrow.app.time.Stage;
import freshfurrow.app.time.TimeTaken;
import freshfurrow.cli.text.HeldBack;
import freshfurrow.cli.text.HowSure;
import freshfurrow.cli.text.PlanReport;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** What is told of a season that was planned, or planned again. */
public final class PlanningReport {
    private static final double NS_PER_S = 1e9;

    private PlanningReport() {}

    /** The season by day, and where the plan is. */
    public static List<String> lines(Planned planned) {
        List<String> lines = new ArrayList<>(PlanReport.lines(planned.season(), planned.plan()));
        lines.add("");
        end(planned.end()).ifPresent(lines::add);
        page(planned.page(), planned.file()).ifPresent(lines::add);
        lines.add("Written to " + planned.file()
                + (planned.page() == PageOutcome.WRITTEN ? ", with plan.html beside it for a browser" : ""));
        lines.add(taken(planned.taken()));
        return lines;
    }

    /** What is taken as done, what the plan changes, and where it is. */
    public static List<String> lines(Replanned replanned) {
        List<String> lines =
                new ArrayList<>(SoFarReport.lines(replanned.whole(), replanned.soFar(), replanned.moment()));
        lines.add("");
        lines.addAll(replanned.changes());
        lines.addAll(HowSure.byItself(replanned.plan()));
        lines.addAll(HeldBack.lines(replanned.plan()));
        lines.add("");
        end(replanned.end()).ifPresent(lines::add);
        page(replanned.page(), replanned.file()).ifPresent(lines::add);
        lines.add("Written to " + replanned.file() + ", kept as " + replanned.kept());
        lines.add(taken(replanned.taken()));
        return lines;
    }

    private static Optional<String> end(PlanningEnd end) {
        if (end.withBounds() && end.withLimits()) {
            return end.stopped() ? Optional.of("Stopped: this is the best plan so far.") : Optional.empty();
        }
        return Optional.of((end.stopped() ? "Stopped before " : "Time was up before ")
                + (end.withBounds() ? "" : end.withLimits() ? "proven minimums" : "proven minimums and ")
                + (end.withLimits() ? "" : "bottlenecks")
                + " were worked out; the plan does not have them.");
    }

    private static Optional<String> page(PageOutcome page, Path plan) {
        return page == PageOutcome.STOPPED
                ? Optional.of("Stopped before plan.html was made: if there is one, it shows another plan;"
                        + " make it with 'freshfurrow page " + plan + " --force'.")
                : Optional.empty();
    }

    private static String taken(TimeTaken taken) {
        return "Took " + seconds(taken.all()) + ": "
                + taken.stages().entrySet().stream()
                        .map(stage -> name(stage.getKey()) + " " + seconds(stage.getValue()))
                        .collect(Collectors.joining(", "));
    }

    private static String name(Stage stage) {
        return switch (stage) {
            case READING -> "reading";
            case SEARCH -> "search";
            case BOUNDS -> "proven minimums";
            case LIMITS -> "bottlenecks";
            case CHANCES -> "simulated seasons";
            case AUDIT -> "audit";
            case CHANGES -> "changes";
            case PAGE -> "page";
            case WRITING -> "writing";
        };
    }

    private static String seconds(Duration time) {
        return String.format(Locale.ROOT, "%.1f s", time.toNanos() / NS_PER_S);
    }
}

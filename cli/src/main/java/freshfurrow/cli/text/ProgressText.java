package freshfurrow.cli.text;

import freshfurrow.model.quantity.DisplayUnits;
import java.time.Duration;
import java.util.Locale;
import java.util.Optional;

/** How far planning is, in a line short enough for a terminal of 80 columns. */
public final class ProgressText {
    private final Figures figures;

    public ProgressText(DisplayUnits units) {
        figures = new Figures(units);
    }

    /**
     * The line.
     *
     * @param timeLeft at the most; empty when planning ends by steps
     * @param lateHaDays area planted after its window times days after
     */
    public String line(Optional<Duration> timeLeft, int fills, double lateHaDays, double unservedHa) {
        return "planning"
                + timeLeft.map(left -> ", " + clock(left) + " left").orElse("")
                + ": " + fills + " fills, " + figures.areaDays(lateHaDays) + " late, " + figures.area(unservedHa)
                + " unplanted";
    }

    private static String clock(Duration left) {
        return String.format(Locale.ROOT, "%d:%02d", left.toMinutes(), left.toSecondsPart());
    }
}

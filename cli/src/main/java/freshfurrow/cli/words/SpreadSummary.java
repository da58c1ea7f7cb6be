package freshfurrow.cli.words;

import freshfurrow.cli.text.Figures;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.TimeSpread;
import freshfurrow.model.season.TimeSpread.Breakdowns;
import java.util.List;

/** How much times vary, and how machines break down, in words. */
final class SpreadSummary {
    private SpreadSummary() {}

    /** A line each; nothing where nothing varies. */
    static List<String> of(Season season) {
        return season.spread()
                .map(spread -> List.of(times(spread), breakdowns(spread)))
                .orElse(List.of());
    }

    private static String times(TimeSpread spread) {
        return "batches by " + Figures.percent(spread.batch()) + ", transfers by " + Figures.percent(spread.transfer())
                + ", drives by " + Figures.percent(spread.drive()) + ", field work by "
                + Figures.percent(spread.planting()) + " (standard deviation)";
    }

    private static String breakdowns(TimeSpread spread) {
        return spread.breakdowns().map(SpreadSummary::breakdowns).orElse("no machine breaks down");
    }

    private static String breakdowns(Breakdowns breakdowns) {
        return "each machine breaks down once in " + span(breakdowns.betweenS()) + " of work on average, for "
                + span(breakdowns.downS());
    }

    private static String span(double seconds) {
        return Figures.toTheSecond(Math.round(seconds));
    }
}

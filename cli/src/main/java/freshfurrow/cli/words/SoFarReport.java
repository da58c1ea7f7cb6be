package freshfurrow.cli.words;

import freshfurrow.app.planning.PlanningMoment;
import freshfurrow.cli.text.Figures;
import freshfurrow.cli.text.WorkWords;
import freshfurrow.model.plan.PlanStart;
import freshfurrow.model.progress.SoFar;
import freshfurrow.model.season.Season;
import java.util.ArrayList;
import java.util.List;

/** What is taken as done, and from where that comes. */
final class SoFarReport {
    private SoFarReport() {}

    static List<String> lines(Season whole, SoFar.Result soFar, PlanningMoment moment) {
        Figures figures = new Figures(whole.units());
        List<String> lines = new ArrayList<>();
        lines.add("Season " + whole.name());
        lines.add("Replanned from " + figures.moment(moment.now()) + " (" + source(moment) + ")");
        double plannedHa = sum(soFar, false);
        double loggedHa = sum(soFar, true);
        lines.add(WorkWords.capital(WorkWords.of(whole).done()) + " so far: " + figures.area(plannedHa + loggedHa)
                + " (" + figures.area(loggedHa) + " logged, " + figures.area(plannedHa) + " assumed done as planned)");
        if (soFar.followedUntil().isBefore(moment.now())) {
            lines.add("The old plan is assumed to have been followed until "
                    + figures.moment(soFar.followedUntil())
                    + ", when something happened that it did not know of; after that the machines stood still.");
        }
        soFar.behind()
                .forEach((machine, by) -> lines.add(machine + " is behind: it begins after "
                        + Figures.toTheSecond(by.toSeconds()) + " more of its hours."));
        return lines;
    }

    private static String source(PlanningMoment moment) {
        return switch (moment.source()) {
            case SAID -> "time given";
            case CLOCK -> "the time now";
            case TOLD -> "time of the latest event given, because today is outside the season";
        };
    }

    private static double sum(SoFar.Result soFar, boolean logged) {
        return soFar.start().planted().stream()
                .filter(part -> soFar.loggedFields().contains(part.field()) == logged)
                .mapToDouble(PlanStart.Planted::areaHa)
                .sum();
    }
}

package freshfurrow.cli.text;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Season;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** What people see of a plan when it is made: the season by day, its totals, and what is late or not planted and why. */
public final class PlanReport {
    private static final int LEAST_NAME_WIDTH = 12;

    private final Season season;
    private final Plan plan;
    private final Figures figures;
    private final int nameWidth;
    private final List<String> lines = new ArrayList<>();

    private PlanReport(Season season, Plan plan) {
        this.season = season;
        this.plan = plan;
        this.figures = new Figures(season.units());
        this.nameWidth = Math.max(LEAST_NAME_WIDTH, WorkWords.of(plan).undone().length());
    }

    /** The report, a line an entry. */
    public static List<String> lines(Season season, Plan plan) {
        PlanReport report = new PlanReport(season, plan);
        report.lines.add("Plan of season " + season.name());
        report.lines.add("");
        report.lines.addAll(SeasonTable.lines(plan));
        report.lines.add("");
        report.totals();
        report.lines.addAll(HowSure.lines(plan));
        report.lines.addAll(HeldBack.lines(plan));
        report.late();
        report.unserved();
        report.lines.addAll(brokenPromises(season, plan));
        return report.lines;
    }

    /** Fields that are not begun on the day that they are fixed to, with a heading; nothing when all are. */
    public static List<String> brokenPromises(Season season, Plan plan) {
        List<String> broken = FixedField.of(season, plan).stream()
                .flatMap(fixed -> fixed.broken().map(why -> "  " + fixed.field().id() + " " + why).stream())
                .toList();
        return broken.isEmpty()
                ? List.of()
                : Stream.concat(Stream.of("", "Fixed, and not to be kept"), broken.stream())
                        .toList();
    }

    private void totals() {
        PlanTotals totals = PlanTotals.of(plan);
        totals.lines()
                .forEach(line ->
                        lines.add(String.format(Locale.ROOT, "%-" + nameWidth + "s %s", line.name(), line.figure())));
        totals.proved().ifPresent(what -> lines.add(what + "."));
    }

    private void late() {
        List<LateField> late = LateField.of(season, plan);
        if (late.isEmpty()) {
            return;
        }
        lines.add("");
        lines.add(WorkWords.capital(WorkWords.of(plan).done()) + " after their window");
        for (LateField field : late) {
            lines.add("  " + field.field().id() + ": " + figures.area(field.areaHa()) + " after "
                    + Figures.day(field.field().window().last()) + ", the last on "
                    + Figures.day(field.lastPlanting().toLocalDate()) + " (" + figures.areaDays(field.haDays()) + ")");
            lines.add("    Why: " + field.why());
        }
    }

    private void unserved() {
        if (plan.unserved().isEmpty()) {
            return;
        }
        lines.add("");
        lines.add(WorkWords.capital(WorkWords.of(plan).undone()));
        for (Plan.Unserved field : plan.unserved()) {
            lines.add("  " + field.field() + ": " + figures.area(field.areaHa()));
            lines.add("    Why: " + field.why());
        }
    }
}

package freshfurrow.cli.text;

import static freshfurrow.model.quantity.Factors.MINUTE_S;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Season;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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
        Plan.Totals totals = plan.totals();
        WorkWords words = WorkWords.of(plan);
        BoundText bounds = new BoundText(plan, figures);
        total(
                WorkWords.capital(words.done()),
                figures.area(totals.areaHa())
                        + (totals.areaHa() > 0
                                ? ", finished on "
                                        + Figures.day(totals.finish().toLocalDate())
                                        + " at "
                                        + figures.clock(totals.finish())
                                : ""));
        if (totals.untreatedHa() > 0) {
            total("Without extract", figures.area(totals.untreatedHa()) + " of that");
        }
        total(WorkWords.capital(words.undone()), figures.area(totals.unservedHa()) + behind(bounds.unserved()));
        total("Late", figures.areaDays(totals.lateHaDays()) + behind(bounds.late()));
        total(
                "Fills",
                Figures.count(totals.planterFills(), words.machine() + " fill", words.machine() + " fills")
                        + behind(bounds.fills()));
        total("Water trips", totals.waterTrips() + behind(bounds.waterTrips()));
        if (totals.compostTrips() > 0) {
            total("Compost trips", Integer.toString(totals.compostTrips()));
        }
        total("Batches", totals.batches() + ", with " + figures.mass(totals.compostKg()) + " of compost");
        total("Dumped", figures.volume(totals.dumpedL()) + " of mix");
        total(
                "Waiting",
                words.machines() + " wait " + Figures.span(minutes(totals.waitMin())) + " for a rig, water or compost");
        if (totals.overtimeMin() > 0) {
            total(
                    "Overtime",
                    Figures.span(minutes(totals.overtimeMin())) + " " + words.done() + " past the hours of the day");
        }
        total(
                "Driving",
                figures.distance(totals.driveKm()) + ", " + words.machines().replace(" and ", ", ")
                        + " and rigs together");
        if (!plan.loads().isEmpty()) {
            total(
                    "Freshness",
                    "the tightest load is in the ground " + Figures.span(minutes(totals.smallestMarginMin()))
                            + " before its use-by time; a typical load " + Figures.span(medianMargin())
                            + " before");
        }
        bounds.proved().ifPresent(what -> lines.add(what + "."));
    }

    private static String behind(Optional<String> remark) {
        return remark.map(text -> " (" + text + ")").orElse("");
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

    private void total(String name, String what) {
        lines.add(String.format(Locale.ROOT, "%-" + nameWidth + "s %s", name, what));
    }

    private static Duration minutes(double minutes) {
        return Duration.ofSeconds((long) Math.floor(minutes * MINUTE_S + 1e-6));
    }

    /** Of an even number of loads the larger one in the middle: half of them reach it. */
    private Duration medianMargin() {
        List<Duration> margins =
                plan.loads().stream().map(plan::margin).sorted().toList();
        return margins.get(margins.size() / 2);
    }
}

package freshfurrow.cli.text;

import freshfurrow.cli.day.MachineDay;
import freshfurrow.cli.day.OnBoard;
import freshfurrow.cli.day.PlanIndex;
import freshfurrow.cli.safety.Hazard;
import freshfurrow.cli.safety.Hazards;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The crew's sheet for one day: what every rig and planter does, where and when. Made from a plan alone. */
public final class DaySheet {
    private static final String RULE = "=".repeat(78);
    private static final String THIN_RULE = "-".repeat(78);

    private static final String INDENT = " ".repeat("[ ] 07:00-07:15  TRANSFER  ".length());

    private final Plan plan;
    private final LocalDate date;
    private final Figures figures;
    private final List<String> lines = new ArrayList<>();

    private DaySheet(Plan plan, LocalDate date) {
        this.plan = plan;
        this.date = date;
        this.figures = new Figures(plan.season().units());
    }

    /** The sheet, a line an entry. */
    public static List<String> lines(Plan plan, LocalDate date) {
        DaySheet sheet = new DaySheet(plan, date);
        sheet.write();
        return sheet.lines;
    }

    private void write() {
        lines.add(RULE);
        lines.add("DAY SHEET   " + Figures.longDay(date) + "   " + plan.season().name());
        lines.add(RULE);
        List<Activity> work = allActivities(plan)
                .filter(activity -> MachineDay.touches(activity, date))
                .toList();
        if (work.isEmpty()) {
            lines.add("");
            lines.add("Nothing is planned on this day.");
            return;
        }
        lines.add(summary());
        PlanIndex index = new PlanIndex(plan);
        Steps steps = new Steps(index, date, figures);
        plan.rigs().forEach((id, rig) -> machine("RIG " + id, Optional.empty(), rig.activities(), steps));
        plan.planters()
                .forEach((id, planter) -> machine(
                        "PLANTER " + id + "   tank " + figures.volume(planter.tankL()),
                        OnBoard.at(plan, id, date.atStartOfDay()).map(this::fromTheDayBefore),
                        planter.activities(),
                        steps));
        cautions(new Hazards(index).on(date));
    }

    private String summary() {
        return PlanDay.of(plan).stream()
                .filter(day -> day.date().equals(date))
                .findFirst()
                .map(this::summary)
                .orElse("No planting and no fills today.");
    }

    private String summary(PlanDay day) {
        double areaHa =
                day.areaHaByField().values().stream().mapToDouble(area -> area).sum();
        List<String> parts = new ArrayList<>();
        if (areaHa > 0) {
            parts.add(figures.area(areaHa) + " to plant");
        }
        if (day.fills() > 0) {
            parts.add(Figures.count(day.fills(), "fill", "fills"));
        }
        if (day.batches() > 0) {
            parts.add(Figures.count(day.batches(), "batch", "batches"));
            parts.add(figures.mass(day.compostKg()) + " of compost");
        }
        if (day.waterTrips() > 0) {
            parts.add(Figures.count(day.waterTrips(), "water trip", "water trips"));
        }
        return (areaHa > 0 ? "" : "No planting today; ") + String.join(", ", parts);
    }

    private void machine(String title, Optional<String> first, List<Activity> activities, Steps steps) {
        lines.add("");
        lines.add(title);
        lines.add(THIN_RULE);
        first.ifPresent(lines::add);
        List<Activity> today = activities.stream()
                .filter(activity -> MachineDay.touches(activity, date))
                .toList();
        if (today.isEmpty()) {
            lines.add("no work today");
        }
        today.forEach(activity -> step(steps.of(activity, activities)));
    }

    private void step(Steps.Step step) {
        lines.add(String.format(
                        Locale.ROOT,
                        "%s %-11s  %-9s %s",
                        step.isDone() ? "[ ]" : "   ",
                        step.clock(),
                        step.verb(),
                        step.text())
                .stripTrailing());
        step.note().ifPresent(note -> lines.add(INDENT + note));
    }

    private String fromTheDayBefore(OnBoard left) {
        return String.format(
                Locale.ROOT,
                "In the tank from the day before: %s of %s for %s, use by %s",
                figures.volume(left.litres()),
                left.load().id(),
                figures.area(left.areaHa()),
                Figures.clock(left.load().deadline(), date));
    }

    private void cautions(List<Hazard> hazards) {
        lines.add("");
        lines.add("CAUTIONS");
        lines.add(THIN_RULE);
        lines.add(Cautions.FIRST);
        Cautions cautions = new Cautions(figures);
        hazards.forEach(hazard -> lines.add(cautions.text(hazard)));
    }

    private static Stream<Activity> allActivities(Plan plan) {
        return Stream.concat(
                plan.planters().values().stream().flatMap(planter -> planter.activities().stream()),
                plan.rigs().values().stream().flatMap(rig -> rig.activities().stream()));
    }
}

package freshfurrow.cli.text;

import freshfurrow.cli.day.Loading;
import freshfurrow.cli.day.MachineDay;
import freshfurrow.cli.day.MixOrder;
import freshfurrow.cli.day.OnBoard;
import freshfurrow.cli.day.PlanIndex;
import freshfurrow.cli.day.PlannedMachine;
import freshfurrow.cli.safety.Hazard;
import freshfurrow.cli.safety.Hazards;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.quantity.ClockFace;
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

    private static final int CLOCK_24 = "07:00".length();
    private static final int CLOCK_12 = "midnight".length();

    private final Plan plan;
    private final LocalDate date;
    private final Figures figures;
    private final CrewClock clock;
    private final PlanIndex index;
    private final WorkWords words;
    private final String stepFormat;
    private final String indent;
    private final List<String> lines = new ArrayList<>();

    private DaySheet(Plan plan, LocalDate date) {
        this.plan = plan;
        this.date = date;
        figures = new Figures(plan.season().units());
        clock = figures.crewClock(date);
        index = new PlanIndex(plan);
        words = WorkWords.of(plan);
        int width = clock.face() == ClockFace.TWELVE_HOURS ? CLOCK_12 : CLOCK_24;
        stepFormat = "%s %" + width + "s  %-9s %s";
        indent = " ".repeat("[ ] ".length() + width + "  TRANSFER  ".length());
    }

    /** The sheet, a line an entry. */
    public static List<String> lines(Plan plan, LocalDate date) {
        DaySheet sheet = new DaySheet(plan, date);
        sheet.write();
        return sheet.lines;
    }

    /** Which day was taken, as none was asked for. */
    public static List<String> chosen(Plan plan, LocalDate date, LocalDate today) {
        Figures figures = new Figures(plan.season().units());
        return List.of(
                date.equals(today)
                        ? "Today, " + figures.longDay(today)
                        : "Today is " + figures.longDay(today) + ". The next day with work is " + figures.longDay(date)
                                + ".");
    }

    private void write() {
        lines.add(RULE);
        lines.add("DAY SHEET   " + figures.longDay(date) + "   " + plan.season().name());
        lines.add(RULE);
        List<MixOrder> orders = MixOrder.on(plan, date);
        if (orders.isEmpty() && allActivities(plan).noneMatch(activity -> MachineDay.touches(activity, date))) {
            lines.add("");
            lines.add("Nothing is planned on this day.");
            return;
        }
        lines.add(summary());
        lines.add(CrewClock.RULE);
        orders(orders);
        Steps steps = new Steps(index, date, figures);
        for (PlannedMachine machine : PlannedMachine.of(plan)) {
            if (machine.kind().isRig()) {
                List<String> first = new ArrayList<>(loading(machine));
                first.addAll(fromTheDayBefore(machine));
                machine("RIG " + machine.id(), first, steps.of(machine));
            } else {
                machine(
                        machine.kind().name() + " " + machine.id() + "   tank "
                                + figures.volume(
                                        plan.planters().get(machine.id()).tankL()),
                        fromTheDayBefore(machine),
                        steps.of(machine));
            }
        }
        cautions(new Hazards(index).on(date));
    }

    private String summary() {
        return PlanDay.of(plan).stream()
                .filter(day -> day.date().equals(date))
                .findFirst()
                .map(this::summary)
                .orElse("No " + words.noun() + " and no fills today.");
    }

    private String summary(PlanDay day) {
        double areaHa =
                day.areaHaByField().values().stream().mapToDouble(area -> area).sum();
        List<String> parts = new ArrayList<>();
        if (areaHa > 0) {
            parts.add(figures.area(areaHa) + " to " + words.verb());
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
        if (day.compostTrips() > 0) {
            parts.add(Figures.count(day.compostTrips(), "compost trip", "compost trips"));
        }
        if (areaHa > 0) {
            return String.join(", ", parts);
        }
        String none = "No " + words.noun() + " today";
        return parts.isEmpty() ? "No " + words.noun() + " begins today." : none + "; " + String.join(", ", parts);
    }

    private void orders(List<MixOrder> orders) {
        if (!orders.isEmpty()) {
            lines.add("");
            lines.add(OrderText.HEADING.toUpperCase(Locale.ROOT));
            lines.add(THIN_RULE);
            OrderText text = new OrderText(index, figures, clock);
            orders.forEach(order -> lines.add(text.text(order)));
        }
    }

    private List<String> loading(PlannedMachine rig) {
        return Optional.ofNullable(MachineDay.byDate(rig).get(date)).stream()
                .flatMap(day -> new LoadingText(figures).items(Loading.of(day, index), index).stream())
                .map(item -> String.format(Locale.ROOT, "%-9s %s", item.what() + ":", item.text()))
                .toList();
    }

    private void machine(String title, List<String> first, List<Steps.Step> steps) {
        lines.add("");
        lines.add(title);
        lines.add(THIN_RULE);
        lines.addAll(first);
        if (steps.isEmpty()) {
            lines.add("no work today");
        }
        steps.forEach(this::step);
    }

    private void step(Steps.Step step) {
        lines.add(String.format(
                        Locale.ROOT,
                        stepFormat,
                        step.isTicked() ? "[ ]" : "   ",
                        step.clock(),
                        step.verb(),
                        step.text())
                .stripTrailing());
        step.note().ifPresent(note -> lines.add(indent + note));
    }

    private List<String> fromTheDayBefore(PlannedMachine machine) {
        return plan.planters().keySet().stream()
                .filter(id -> PlanIndex.crewOf(plan, id).equals(machine.id()))
                .flatMap(id -> OnBoard.at(plan, id, date.atStartOfDay()).stream())
                .map(this::fromTheDayBefore)
                .toList();
    }

    private String fromTheDayBefore(OnBoard left) {
        return String.format(
                Locale.ROOT,
                "In the tank from the day before: %s of %s for %s, use by %s%s",
                figures.volume(left.litres()),
                left.load().id(),
                figures.area(left.areaHa()),
                clock.by(left.load().deadline()),
                Steps.inHand(left.load()));
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

package freshfurrow.desk.today;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.app.log.DayOfWork;
import freshfurrow.cli.day.MachineDay;
import freshfurrow.cli.day.MixOrder;
import freshfurrow.cli.day.PlanIndex;
import freshfurrow.cli.day.PlannedMachine;
import freshfurrow.cli.safety.Hazards;
import freshfurrow.cli.text.Cautions;
import freshfurrow.cli.text.Figures;
import freshfurrow.cli.text.OrderText;
import freshfurrow.cli.text.Steps;
import freshfurrow.desk.server.Json;
import freshfurrow.model.log.Column;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.progress.LoggedWork;
import freshfurrow.model.season.Machine;
import freshfurrow.model.season.PlaceIndex;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import freshfurrow.model.write.LineOfFact;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** A day's work, step by step, as the day sheet tells it, and what of it is logged. */
final class DayData {
    private final DayOfWork work;
    private final LocalDate day;
    private final ObjectNode data = Json.object();

    private DayData(DayOfWork work, LocalDate day) {
        this.work = work;
        this.day = day;
    }

    /** @param asked which day; without it, today, or the next day with work */
    static ObjectNode of(DayOfWork work, Optional<LocalDate> asked) {
        TreeSet<LocalDate> days = new TreeSet<>();
        work.plan().ifPresent(plan -> MachineDay.withOrders(plan).forEach(one -> days.add(one.date())));
        LocalDate today =
                work.now().map(LocalDateTime::toLocalDate).orElse(work.season().first());
        LocalDate day =
                asked.orElseGet(() -> Optional.ofNullable(days.ceiling(today)).orElse(today));
        DayData data = new DayData(work, day);
        data.write();
        Optional.ofNullable(days.lower(day)).ifPresent(before -> data.data.put("before", before.toString()));
        Optional.ofNullable(days.higher(day)).ifPresent(after -> data.data.put("after", after.toString()));
        return data.data;
    }

    private void write() {
        Season season = work.season();
        data.put("day", day.toString()).put("name", new Figures(season.units()).longDay(day));
        work.now().ifPresent(now -> data.put("now", now.toString()));
        names(season);
        LoggedEntries.write(data.putArray("log"), work, day);
        ArrayNode machines = data.putArray("machines");
        work.plan().ifPresent(plan -> plan(machines, plan));
    }

    private void names(Season season) {
        ArrayNode fields = data.putArray("fields");
        season.fields()
                .forEach(field -> fields.addObject().put("id", field.id()).put("name", field.name()));
        data.set("allMachines", Json.list(season.machines().map(Machine::id).toList()));
        data.set("rigs", Json.list(season.rigs().stream().map(Rig::id).toList()));
        data.set("places", Json.list(PlaceIndex.of(season).ids()));
        data.set(
                "lots", Json.list(season.compost().stream().map(lot -> lot.id()).toList()));
    }

    private void plan(ArrayNode machines, Plan plan) {
        Figures figures = new Figures(plan.season().units());
        PlanIndex index = new PlanIndex(plan);
        OrderText orders = new OrderText(index, figures, figures.crewClock(day));
        data.set(
                "orders",
                Json.list(MixOrder.on(plan, day).stream().map(orders::text).toList()));
        Steps steps = new Steps(index, day, figures);
        LoggedWork logged = LoggedWork.of(plan, work.log());
        for (PlannedMachine machine : PlannedMachine.of(plan)) {
            List<Activity> some = machine.activities().stream()
                    .filter(activity -> MachineDay.touches(activity, day))
                    .toList();
            ObjectNode its = machines.addObject()
                    .put("id", machine.id())
                    .put("kind", machine.kind().name());
            ArrayNode list = its.putArray("steps");
            some.forEach(activity -> steps.of(machine, List.of(activity))
                    .forEach(step -> step(list, step).setAll(tick(plan, machine.id(), activity, logged))));
        }
        Cautions cautions = new Cautions(figures);
        List<String> texts =
                new Hazards(index).on(day).stream().map(cautions::text).toList();
        if (!texts.isEmpty()) {
            data.put("firstOfAll", Cautions.FIRST);
            data.set("cautions", Json.list(texts));
        }
    }

    private static ObjectNode step(ArrayNode list, Steps.Step step) {
        ObjectNode data = list.addObject()
                .put("clock", step.clock())
                .put("verb", step.verb())
                .put("text", step.text());
        step.note().ifPresent(note -> data.put("note", note));
        return data;
    }

    /** What is logged of it, and the line that says it was done as planned. */
    private ObjectNode tick(Plan plan, String crew, Activity activity, LoggedWork logged) {
        ObjectNode tick = Json.object();
        String machine = plan.rigs().containsKey(crew) && activity instanceof Activity.Planting
                ? sprayerOn(plan, activity)
                : crew;
        logged.asPlanned(machine, activity).ifPresent(fact -> {
            ObjectNode line = tick.putObject("line");
            new LineOfFact(plan.season().units())
                    .cells(activity.end(), fact)
                    .forEach((column, text) -> line.put(column.title(), text));
            line.remove(Column.NOTE.title());
            tick.put("logged", logged.has(activity));
        });
        return tick;
    }

    /** A rig's crew sprays with what is mounted on the rig. */
    private static String sprayerOn(Plan plan, Activity activity) {
        return plan.planters().entrySet().stream()
                .filter(one -> one.getValue().activities().contains(activity))
                .map(java.util.Map.Entry::getKey)
                .findFirst()
                .orElseThrow();
    }
}

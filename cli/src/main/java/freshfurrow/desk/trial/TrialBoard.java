package freshfurrow.desk.trial;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.app.trial.Begun;
import freshfurrow.app.trial.Tried;
import freshfurrow.cli.text.Figures;
import freshfurrow.cli.text.PlanReport;
import freshfurrow.desk.server.Json;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import freshfurrow.model.text.FieldLabel;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A plan as a board: machines down, days across, and on each day the fields that are begun. */
final class TrialBoard {
    private TrialBoard() {}

    static ObjectNode of(Season season, Plan plan) {
        ObjectNode board = Json.object();
        machines(board.putArray("machines"), season, plan);
        fields(board.putArray("fields"), season, plan);
        LocalDate first = plan.start().map(start -> start.now().toLocalDate()).orElse(season.first());
        days(board.putArray("days"), season, first);
        board.set(
                "broken",
                Json.list(PlanReport.brokenPromises(season, plan).stream()
                        .map(String::strip)
                        .filter(line -> !line.isEmpty())
                        .toList()));
        return board;
    }

    private static void machines(ArrayNode machines, Season season, Plan plan) {
        for (Applicator machine : season.applicators()) {
            machines.addObject()
                    .put("id", machine.id())
                    .put("work", machine.work().key())
                    .set(
                            "list",
                            Json.list(Optional.ofNullable(plan.planters().get(machine.id()))
                                    .map(Plan.PlanterPlan::fields)
                                    .orElse(List.of())));
        }
    }

    private static void days(ArrayNode days, Season season, LocalDate first) {
        for (LocalDate day = first; !day.isAfter(season.last()); day = day.plusDays(1)) {
            days.addObject()
                    .put("date", day.toString())
                    .put("name", Figures.day(day))
                    .put("closed", season.closed().contains(day));
        }
    }

    private static void fields(ArrayNode fields, Season season, Plan plan) {
        Figures figures = new Figures(season.units());
        Map<String, Activity.Planting> begun = new HashMap<>();
        Map<String, String> machine = new HashMap<>();
        Map<String, LocalDate> end = new HashMap<>();
        plan.planters().forEach((id, its) -> its.activities().forEach(activity -> {
            if (activity instanceof Activity.Planting planting) {
                begun.putIfAbsent(planting.field(), planting);
                machine.putIfAbsent(planting.field(), id);
                end.put(planting.field(), planting.end().toLocalDate());
            }
        }));
        List<Field> inOrder = season.fields().stream()
                .sorted(Comparator.comparing((Field field) -> Optional.ofNullable(begun.get(field.id()))
                        .map(Activity::start)
                        .orElse(season.end())))
                .toList();
        for (Field field : inOrder) {
            ObjectNode data = fields.addObject()
                    .put("id", field.id())
                    .put("label", FieldLabel.of(field.id(), field.name()))
                    .put("area", figures.area(field.areaHa()))
                    .put("first", field.window().first().toString())
                    .put("last", field.window().last().toString())
                    .put("work", field.work().key());
            Activity.Planting planting = begun.get(field.id());
            if (planting != null) {
                data.put("machine", machine.get(field.id()))
                        .put("day", planting.start().toLocalDate().toString())
                        .put("starts", figures.moment(planting.start()))
                        .put("late", end.get(field.id()).isAfter(field.window().last()));
            }
            if (planting instanceof Activity.PlantWithout) {
                data.put("without", true);
            }
            field.fixed().on().ifPresent(day -> data.put("fixedOn", day.toString()));
            field.fixed().planter().ifPresent(id -> data.put("fixedTo", id));
            ArrayNode allowed = data.putArray("machines");
            season.applicators().stream()
                    .filter(field::allows)
                    .map(Applicator::id)
                    .forEach(allowed::add);
        }
    }

    static void moved(ObjectNode answer, Tried tried) {
        ArrayNode moved = answer.putArray("moved");
        tried.moved().forEach(one -> moved.addObject()
                .put("field", one.field())
                .put("from", one.from().map(TrialBoard::text).orElse("not started"))
                .put("to", one.to().map(TrialBoard::text).orElse("not started")));
    }

    private static String text(Begun begun) {
        return begun.machine() + " " + Figures.day(begun.day());
    }
}

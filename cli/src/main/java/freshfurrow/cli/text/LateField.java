package freshfurrow.cli.text;

import freshfurrow.cli.day.FieldWork;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Planter;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WorkHours;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A field of which a part is planted after its window.
 *
 * @param areaHa planted after the window, ha
 * @param haDays that area times the days after the window's last date, unweighted
 * @param lastPlanting when the last of it is planted
 * @param window what its planter did with the window
 */
record LateField(
        Field field, double areaHa, double haDays, LocalDateTime lastPlanting, String planter, TimeUse window) {

    /** The late fields in the season's order. */
    static List<LateField> of(Season season, Plan plan) {
        Map<String, Map<String, List<Activity.Plant>>> plantings = new HashMap<>();
        plan.planters().forEach((id, planter) -> plantings.put(id, byField(planter)));
        List<LateField> late = new ArrayList<>();
        for (Field field : season.fields()) {
            plan.planters().forEach((id, planter) -> {
                List<Activity.Plant> after = late(field, plantings.get(id).getOrDefault(field.id(), List.of()));
                if (!after.isEmpty()) {
                    late.add(of(season, field, id, planter, after));
                }
            });
        }
        return late;
    }

    /** What kept its planter from it, in one sentence without a stop. */
    String why() {
        if (window.parts().isEmpty()) {
            return "the plan gives " + planter + " nothing to do in the whole of its window";
        }
        return "in its window " + planter + " spent "
                + String.join(
                        ", ",
                        window.parts().stream()
                                .map(part -> Figures.span(part.howLong()) + " " + part.what())
                                .toList());
    }

    private static LateField of(
            Season season, Field field, String id, Plan.PlanterPlan planter, List<Activity.Plant> after) {
        double areaHa = after.stream().mapToDouble(Activity.Plant::areaHa).sum();
        return new LateField(
                field,
                areaHa,
                FieldWork.haDaysAfter(field.window(), after),
                after.get(after.size() - 1).end(),
                id,
                TimeUse.of(planter, field.id(), field.window(), hours(season, id), season.closed()));
    }

    private static WorkHours hours(Season season, String planter) {
        return season.planters().stream()
                .filter(own -> own.id().equals(planter))
                .findFirst()
                .map(Planter::hours)
                .orElse(WorkHours.ALWAYS);
    }

    private static Map<String, List<Activity.Plant>> byField(Plan.PlanterPlan planter) {
        return planter.activities().stream()
                .filter(Activity.Plant.class::isInstance)
                .map(Activity.Plant.class::cast)
                .collect(Collectors.groupingBy(Activity.Plant::field));
    }

    private static List<Activity.Plant> late(Field field, List<Activity.Plant> plantings) {
        return plantings.stream()
                .filter(planting ->
                        planting.start().toLocalDate().isAfter(field.window().last()))
                .toList();
    }
}

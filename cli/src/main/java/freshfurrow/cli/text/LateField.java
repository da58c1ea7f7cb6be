package freshfurrow.cli.text;

import freshfurrow.cli.day.FieldWork;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WorkHours;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;

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
        List<LateField> late = new ArrayList<>();
        for (FieldWork work : FieldWork.of(season, plan)) {
            plan.planters().forEach((id, planter) -> {
                List<Activity.Planting> after = plantedLate(work, id);
                if (!after.isEmpty()) {
                    late.add(of(season, work.field(), id, planter, after));
                }
            });
        }
        return late;
    }

    /** What kept its planter from it, in one sentence without a stop. */
    String why() {
        List<String> parts = window.parts().stream()
                .filter(part -> part.howLong().toMinutes() > 0)
                .map(part -> Figures.span(part.howLong()) + " " + part.what())
                .toList();
        return parts.isEmpty()
                ? "the plan gives " + planter + " nothing to do while its window is open"
                : "while its window was open " + planter + " spent " + String.join(", ", parts);
    }

    private static LateField of(
            Season season, Field field, String id, Plan.PlanterPlan planter, List<Activity.Planting> after) {
        double areaHa = after.stream().mapToDouble(Activity.Planting::areaHa).sum();
        return new LateField(
                field,
                areaHa,
                FieldWork.haDaysAfter(field.window(), after),
                after.get(after.size() - 1).end(),
                id,
                TimeUse.of(planter, field.id(), field.window(), hours(season, id), season.closed()));
    }

    private static WorkHours hours(Season season, String planter) {
        return season.applicators().stream()
                .filter(own -> own.id().equals(planter))
                .findFirst()
                .map(Applicator::hours)
                .orElse(WorkHours.ALWAYS);
    }

    private static List<Activity.Planting> plantedLate(FieldWork work, String planter) {
        return work.pieces().stream()
                .filter(piece -> piece.planter().equals(planter))
                .map(FieldWork.Piece::planting)
                .filter(planting -> planting.start()
                        .toLocalDate()
                        .isAfter(work.field().window().last()))
                .toList();
    }
}

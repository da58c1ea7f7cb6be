package freshfurrow.app.plan;

import freshfurrow.app.input.GivenPlan;
import freshfurrow.app.input.SeasonOfPlan;
import freshfurrow.app.refusal.PlanRefusal;
import freshfurrow.app.refusal.Refused;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.why.FieldExplanation;

/** Why a field is planted when it is. */
public final class WhyField {
    private WhyField() {}

    /**
     * The explanation. Blocks while the plan is played out with the field elsewhere.
     *
     * @param field id of a field of the plan's season
     * @throws Refused when plan or season cannot be used, or nothing is left of such a field
     */
    public static FieldExplanation of(GivenPlan given, SeasonOfPlan season, String field) {
        OpenedPlan opened = OpenedPlan.of(given, season);
        Field asked = field(opened, field);
        try {
            return FieldExplanation.of(CompiledSeason.of(opened.season()), opened.whole(), opened.plan(), asked);
        } catch (IllegalArgumentException e) {
            throw new Refused(new PlanRefusal.Unplayable(opened.file(), String.valueOf(e.getMessage())));
        }
    }

    private static Field field(OpenedPlan opened, String id) {
        Season season = opened.season();
        return season.fields().stream()
                .filter(field -> field.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new Refused(
                        isPlantedBefore(opened.plan(), id)
                                ? new PlanRefusal.PlantedBefore(id)
                                : new PlanRefusal.NoField(
                                        id,
                                        season.fields().stream().map(Field::id).toList())));
    }

    private static boolean isPlantedBefore(Plan plan, String field) {
        return plan.start().stream().flatMap(start -> start.planted().stream()).anyMatch(part -> part.field()
                .equals(field));
    }
}

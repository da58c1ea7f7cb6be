package freshfurrow.solver.why;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import freshfurrow.solver.schedule.FieldLists;
import java.util.List;
import java.util.Optional;

/**
 * All that there is to say about one field of a plan.
 *
 * @param plan the plan's lists played out again, with the plan's own score
 * @param best the best other positions, recorded, the best score first; a few at the most
 * @param reliefs what would have the field in time; empty when it is
 * @param untreated why it is planted without extract; empty when none of it is
 */
public record FieldExplanation(
        Season season,
        Plan plan,
        Field field,
        FieldPositions positions,
        List<Alternative> best,
        Optional<Reliefs> reliefs,
        Optional<Untreated> untreated) {
    private static final int MOST_RECORDED = 3;

    /** Another position of the field, and the plan that it makes. */
    public record Alternative(Position position, Plan plan) {}

    public FieldExplanation {
        best = List.copyOf(best);
    }

    /**
     * Plays the plan's lists out again, with the field at each of its positions, and with more of what keeps it from being in time.
     *
     * <p>A field that stands in no list is looked at where it does best, when more is given.
     *
     * @param compiled what was left of the whole season when the plan was made
     * @throws IllegalArgumentException when the plan's lists are not lists of that season, or its score is not theirs
     */
    public static FieldExplanation of(CompiledSeason compiled, Season whole, Plan plan, Field field) {
        Season season = compiled.season();
        PlantingOrders orders = PlantingOrders.of(
                plan, season.applicators().stream().map(Applicator::id).toList());
        Plan played = PlanRecorder.record(compiled, orders, plan.season());
        if (!played.score().equals(plan.score())) {
            throw new IllegalArgumentException(
                    "its planting orders give a different score than it says; it was changed, or made by another version");
        }
        FieldLists lists = FieldLists.of(season, orders);
        FieldPositions positions =
                FieldPositions.of(compiled, lists, season.fields().indexOf(field));
        List<Alternative> best = positions.others().stream()
                .limit(MOST_RECORDED)
                .map(position -> new Alternative(
                        position, PlanRecorder.record(compiled, position.lists().orders(season), plan.season())))
                .toList();
        Optional<Position> where =
                positions.own().or(() -> positions.others().stream().findFirst());
        Optional<Reliefs> reliefs = Reliefs.inTime(played, field)
                ? Optional.empty()
                : where.map(position -> Reliefs.of(compiled, whole, position.lists(), field, plan.season()));
        return new FieldExplanation(
                season,
                played,
                field,
                positions,
                best,
                reliefs,
                Untreated.of(compiled, whole, played, lists, field, positions));
    }
}

package freshfurrow.solver.why;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.GoneWithout;
import freshfurrow.model.timeline.PlanRecorder;
import freshfurrow.solver.schedule.FieldLists;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Why a field is planted without extract, and what would have it planted with extract.
 *
 * @param without its parts that are planted without, in time order, at least one
 * @param atItsPlace what comes of planting it with extract at its own place, all else as it is; empty unless it is decided to go without
 * @param elsewhere the best position at which all of it is planted with extract, and of the others no more is late, unplanted or without extract
 *     than in the plan, by area and by weight, if there is one
 * @param reliefs what would have all of it planted with extract at its own place, and no more of the others without it or unplanted
 */
public record Untreated(
        List<GoneWithout> without,
        Optional<FieldExplanation.Alternative> atItsPlace,
        Optional<FieldExplanation.Alternative> elsewhere,
        Reliefs reliefs) {
    public Untreated {
        without = List.copyOf(without);
    }

    /** Area that is planted without, ha. */
    public double withoutHa() {
        return without.stream().mapToDouble(GoneWithout::areaHa).sum();
    }

    /**
     * What there is to say of a field of a plan; empty when none of it is planted without extract.
     *
     * @param lists of the plan
     * @param own where the field stands, and its other positions
     */
    static Optional<Untreated> of(
            CompiledSeason compiled, Season whole, Plan plan, FieldLists lists, Field field, FieldPositions own) {
        List<GoneWithout> without = GoneWithout.all(compiled, lists.orders(compiled.season())).stream()
                .filter(part -> part.field().equals(field.id()))
                .toList();
        if (without.isEmpty()) {
            return Optional.empty();
        }
        int index = compiled.season().fields().indexOf(field);
        boolean decided = lists.withoutExtract().contains(index);
        FieldLists with = with(lists, index);
        FieldPositions positions = decided ? FieldPositions.of(compiled, with, index) : own;
        Wanted wanted = new Wanted(plan, field, untreatedHa(plan, field));
        Recording recording = new Recording(compiled, plan.season());
        return Optional.of(new Untreated(
                without,
                decided ? positions.own().map(recording::of) : Optional.empty(),
                positions.others().stream()
                        .filter(other -> isNoWorse(other.outcome(), own.planned()))
                        .map(recording::of)
                        .filter(other -> wanted.isIn(other.plan()))
                        .findFirst(),
                Reliefs.forExtract(compiled, whole, with, field, plan.season(), wanted::isIn)));
    }

    private static FieldLists with(FieldLists lists, int field) {
        Set<Integer> without = new HashSet<>(lists.withoutExtract());
        without.remove(field);
        return lists.goingWithout(without);
    }

    private static boolean isNoWorse(Outcome outcome, Outcome planned) {
        return outcome.forbiddenFields() <= planned.forbiddenFields()
                && outcome.unservedDm2() <= planned.unservedDm2()
                && outcome.lateMilliDm2Days() <= planned.lateMilliDm2Days()
                && outcome.untreatedMilliDm2() <= planned.untreatedMilliDm2();
    }

    private static double untreatedHa(Plan plan, Field field) {
        return plan.planters().values().stream()
                .flatMap(planter -> planter.activities().stream())
                .filter(Activity.PlantWithout.class::isInstance)
                .map(Activity.PlantWithout.class::cast)
                .filter(planting -> planting.field().equals(field.id()))
                .mapToDouble(Activity.PlantWithout::areaHa)
                .sum();
    }

    /** All of a field with extract, and no more of the others without it or unplanted. */
    private record Wanted(Plan planned, Field field, double withoutHa) {
        boolean isIn(Plan plan) {
            return untreatedHa(plan, field) == 0
                    && plan.unserved().stream().noneMatch(left -> left.field().equals(field.id()))
                    && plan.totals().unservedHa() < planned.totals().unservedHa() + Plan.LEAST_HA
                    && plan.totals().untreatedHa() < planned.totals().untreatedHa() - withoutHa + Plan.LEAST_HA
                    && plan.score().hard() >= planned.score().hard();
        }
    }

    private record Recording(CompiledSeason compiled, Plan.SeasonSource source) {
        FieldExplanation.Alternative of(Position position) {
            PlantingOrders orders = position.lists().orders(compiled.season());
            return new FieldExplanation.Alternative(position, PlanRecorder.record(compiled, orders, source));
        }
    }
}

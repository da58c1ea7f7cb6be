package freshfurrow.solver.why;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.Distances;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import freshfurrow.solver.schedule.FieldLists;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * How much more of each one thing has a field planted whole and within its window, or with extract, with lists as they are.
 *
 * <p>Each amount was played out, and a step less was played out too and is not enough. Amounts are tried by doubling and then by
 * halving: in a queue of shared machines more of one thing can make a field later, so that a smaller amount that was not
 * tried may do as well.
 *
 * @param enough what suffices, in the order in which things are tried
 * @param inVain the most that was tried of each thing of which no amount tried is enough
 */
public record Reliefs(List<Enough> enough, List<Relief> inVain) {
    /**
     * A relief that suffices.
     *
     * @param plan the season played out with it
     */
    public record Enough(Relief relief, Plan plan) {}

    public Reliefs {
        enough = List.copyOf(enough);
        inVain = List.copyOf(inVain);
    }

    /**
     * Tries all that makes sense in the season to have a field in time.
     *
     * @param lists in one of which the field stands
     * @throws IllegalArgumentException when it stands in none
     */
    static Reliefs of(CompiledSeason season, Season whole, FieldLists lists, Field field, Plan.SeasonSource source) {
        Search search = new Search(season, lists, field, source, plan -> inTime(plan, field));
        return search.all(ReliefKinds.of(season.season(), whole, search.planter(), field));
    }

    /**
     * Tries all that makes sense in the season to have a field planted with extract.
     *
     * @param lists in one of which the field stands, to be planted with extract
     * @param isEnough whether a plan does it
     * @throws IllegalArgumentException when it stands in none
     */
    static Reliefs forExtract(
            CompiledSeason season,
            Season whole,
            FieldLists lists,
            Field field,
            Plan.SeasonSource source,
            Predicate<Plan> isEnough) {
        Search search = new Search(season, lists, field, source, isEnough);
        return search.all(ReliefKinds.forExtract(season.season(), whole, search.planter(), field));
    }

    /** Whether the plan plants the field whole and none of it after its window. */
    public static boolean inTime(Plan plan, Field field) {
        return plan.unserved().stream().noneMatch(left -> left.field().equals(field.id()))
                && plan.planters().values().stream()
                        .flatMap(planter -> planter.activities().stream())
                        .filter(Activity.Planting.class::isInstance)
                        .map(Activity.Planting.class::cast)
                        .filter(planting -> planting.field().equals(field.id()))
                        .noneMatch(planting -> planting.start()
                                .toLocalDate()
                                .isAfter(field.window().last()));
    }

    private static final class Search {
        private final Season season;
        private final Distances roads;
        private final PlantingOrders orders;
        private final Field field;
        private final Plan.SeasonSource source;
        private final Predicate<Plan> isEnough;

        Search(
                CompiledSeason compiled,
                FieldLists lists,
                Field field,
                Plan.SeasonSource source,
                Predicate<Plan> isEnough) {
            this.isEnough = isEnough;
            this.season = compiled.season();
            this.roads = compiled.roads();
            this.orders = lists.orders(season);
            this.field = field;
            this.source = source;
        }

        Reliefs all(List<ReliefKind> kinds) {
            List<Enough> enough = new ArrayList<>();
            List<Relief> inVain = new ArrayList<>();
            for (ReliefKind kind : kinds) {
                least(kind, enough, inVain);
            }
            return new Reliefs(enough, inVain);
        }

        Applicator planter() {
            for (int p = 0; p < orders.byPlanter().size(); p++) {
                if (orders.byPlanter().get(p).contains(field.id())) {
                    return season.applicators().get(p);
                }
            }
            throw new IllegalArgumentException("field " + field.id() + " stands in no list");
        }

        private void least(ReliefKind kind, List<Enough> enough, List<Relief> inVain) {
            int tooLittle = 0;
            int count = 1;
            Optional<Enough> least = tried(kind.of(count));
            while (least.isEmpty()) {
                if (count == kind.most()) {
                    inVain.add(kind.of(count));
                    return;
                }
                tooLittle = count;
                count = Math.min(kind.most(), 2 * count);
                least = tried(kind.of(count));
            }
            while (count - tooLittle > 1) {
                int middle = (tooLittle + count) / 2;
                Optional<Enough> less = tried(kind.of(middle));
                if (less.isPresent()) {
                    count = middle;
                    least = less;
                } else {
                    tooLittle = middle;
                }
            }
            least.ifPresent(enough::add);
        }

        private Optional<Enough> tried(Relief relief) {
            Season relieved = relief.addedTo(season).change().distances(roads).season();
            Plan plan = PlanRecorder.record(CompiledSeason.of(relieved), orders, source);
            return isEnough.test(plan) ? Optional.of(new Enough(relief, plan)) : Optional.empty();
        }
    }
}

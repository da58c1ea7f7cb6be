package freshfurrow.solver.relaxation;

import freshfurrow.model.timeline.CompiledSeason;
import java.util.List;

/**
 * The fewest fills, or the least effort of fills and of planting late in the season, of plans that are no later than one that is known.
 *
 * <p>Proof. The season's days are cut into blocks. Take any plan that leaves no more unplanted or without extract, and whose late and unplanted area weighs no more. Let V(g,b) be what it treats of
 * the fields of one recipe and late weight in block b, U(g) what it leaves of them unplanted or without extract, and X(k,r,b) what planters of one kind k treat
 * of recipe r. Then
 *
 * <ul>
 *   <li>the sum of X over k is the sum of V over g, both of recipe r and block b; the first blocks' V come to no more than the area whose windows have opened;
 *   <li>what is late on a day d of block b is at least L = due(g,d) - V(g,1) - ... - V(g,b) - U(g), and due never shrinks; all of it, by its weight and its days, with what U weighs at
 *       the least, comes to no more than in the known plan;
 *   <li>what only planters of a set may plant of a recipe is, but for U, planted by kinds with a planter of the set;
 *   <li>fills and time of each kind keep to {@link FillsOfDays}.
 * </ul>
 *
 * <p>Each fill costs its share, and what is planted in a block at least the days from the season's first to the block's. What planters have in their tanks to begin with takes no fill: its
 * share of the largest load of its planter comes off.
 */
public final class FillProgram {
    final CompiledSeason season;
    final List<FieldGroup> groups;
    final LargestLoads largest;
    final List<AlikePlanters> kinds;
    final DayBlocks blocks;
    final FillsOfDays fillsOfDays;

    /** What does not depend on a plan. */
    public FillProgram(CompiledSeason season, List<FieldGroup> groups) {
        this.season = season;
        this.groups = groups;
        largest = new LargestLoads(season);
        PlanterDays days = new PlanterDays(season, groups);
        kinds = AlikePlanters.of(season, largest, days);
        blocks = DayBlocks.of(
                season.days(), kinds.size() * (season.season().recipes().size() + 1) + 2 * kindsOfFields());
        fillsOfDays = new FillsOfDays(season, largest, days);
    }

    private int kindsOfFields() {
        return (int) groups.stream()
                .map(group -> List.of(group.recipe(), group.weight()))
                .distinct()
                .count();
    }

    /**
     * What plans are compared with.
     *
     * @param leftDm2 left unplanted or without extract, of fields that some planter may plant
     * @param mostHarmDm2Days late area by its weight, with what is left, as the score weighs both; infinite where that does not bind
     * @param harmPerLeftDm2 what leaving a dm2 weighs in it at the least
     */
    public record NoWorse(double leftDm2, double mostHarmDm2Days, double harmPerLeftDm2) {}

    /**
     * At the least, in the unit of the costs.
     *
     * @param perFill what a fill costs
     * @param perDm2Day what planting a dm2 a day later costs
     */
    public double least(NoWorse than, double perFill, double perDm2Day) {
        return new FillRows(this, than, perFill, perDm2Day).least();
    }
}

package freshfurrow.solver.construction;

import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.estimate.SeasonEstimate;

/**
 * Fields that are fixed to a day and that a planter may plant come first on that day, and before it wherever a field would take the planter past it.
 */
final class FixedFirst {
    private static final int NONE = -1;

    private final CompiledSeason season;
    private final SeasonEstimate estimate;
    private final double slowness;
    private final int planter;
    private final int from;
    private final double clockS;
    private int first = NONE;
    private int firstDay = Integer.MAX_VALUE;

    /**
     * What presses a planter that is free at {@code clockS}.
     *
     * @param from the field where it stands, or {@code SeasonEstimate.START}
     */
    FixedFirst(CompiledSeason season, SeasonEstimate estimate, double slowness, int planter, int from, double clockS) {
        this.season = season;
        this.estimate = estimate;
        this.slowness = slowness;
        this.planter = planter;
        this.from = from;
        this.clockS = clockS;
    }

    /** Takes note of a field that is left. */
    void look(int field) {
        int day = season.fixedDay(field).orElse(Integer.MAX_VALUE);
        if (day < firstDay && season.allows(planter, field)) {
            first = field;
            firstDay = day;
        }
    }

    /** How much a field presses, of which a rule says how much it does where nothing is fixed. */
    double pressure(double byRule, int field) {
        if (first == NONE) {
            return byRule;
        }
        if (field == first) {
            return clockS < estimate.clockAtStartOf(firstDay, planter) ? -Double.MAX_VALUE : Double.MAX_VALUE;
        }
        double endS = Math.max(
                        clockS + estimate.moveS(planter, from, field),
                        estimate.clockAtStartOf(estimate.opens(field), planter))
                + estimate.plantS(planter, field) * slowness
                + estimate.moveS(planter, field, first);
        return endS < estimate.clockAtStartOf(firstDay + 1, planter) ? byRule : Double.NEGATIVE_INFINITY;
    }
}

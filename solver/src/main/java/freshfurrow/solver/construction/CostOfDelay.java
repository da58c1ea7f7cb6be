package freshfurrow.solver.construction;

import freshfurrow.solver.estimate.SeasonEstimate;

/**
 * Weighs late weight and work of a field against the time left to its window's end and the way to it: the rule of apparent
 * tardiness cost with setups (Lee, Bhaskaran and Pinedo 1997, IIE Transactions 29). A window that is still closed counts as
 * a longer way.
 */
final class CostOfDelay implements NextField {
    private final SeasonEstimate season;
    private final double slowness;
    private final double lookAheadS;
    private final double roadS;

    /**
     * @param planters that plant, 1 or more
     * @param lookAhead how far ahead of its window's end a field begins to press, in average field times, above 0
     * @param dislikeOfRoads in average field times, above 0; less keeps to nearer fields
     */
    CostOfDelay(SeasonEstimate season, int planters, double slowness, double lookAhead, double dislikeOfRoads) {
        this.season = season;
        this.slowness = slowness;
        double totalS = 0;
        for (int field = 0; field < season.fieldCount(); field++) {
            totalS += season.plantS(0, field) * slowness;
        }
        double averageS = totalS / Math.max(1, season.fieldCount());
        this.lookAheadS = lookAhead * averageS * planters;
        this.roadS = dislikeOfRoads * averageS;
    }

    /** The logarithm of the rule's index, which orders alike and does not underflow. */
    @Override
    public double pressure(int planter, int from, int field, double clockS) {
        double workS = season.plantS(planter, field) * slowness;
        double wayS = Math.max(
                season.moveS(planter, from, field), season.clockAtStartOf(season.opens(field), planter) - clockS);
        double slackS = season.clockAtStartOf(season.closes(field) + 1, planter) - clockS - workS;
        return Math.log(Math.max(season.lateWeight(field), 1e-3) / workS)
                - Math.max(0, slackS) / lookAheadS
                - wayS / roadS;
    }
}

package freshfurrow.solver.construction;

import freshfurrow.solver.estimate.SeasonEstimate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * A rule by which fields are given out, whatever the fleet.
 *
 * @param slowness how much longer planting a field takes than without fills and waiting, 1 or more
 */
record Rule(double slowness, Function<Fleet, NextField> next) {
    /** There is no way to know before it is played out. */
    private static final double[] SLOWNESS = {1, 1.4, 2.2};

    private static final double[] DAYS_OF_SLACK = {0, 3, 7};
    private static final double[] LOOK_AHEAD = {1, 2, 6};
    private static final double[] DISLIKE_OF_ROADS = {0.1, 0.3};

    /** All that are tried; the first is that of {@link FirstLists#byHand}. */
    static List<Rule> all(SeasonEstimate season) {
        List<Rule> rules = new ArrayList<>();
        for (double slowness : SLOWNESS) {
            for (double days : DAYS_OF_SLACK) {
                rules.add(new Rule(slowness, fleet -> new ClosingSoon(season, days)));
            }
            for (double lookAhead : LOOK_AHEAD) {
                for (double dislike : DISLIKE_OF_ROADS) {
                    rules.add(new Rule(
                            slowness, fleet -> new CostOfDelay(season, fleet.size(), slowness, lookAhead, dislike)));
                }
            }
        }
        return rules;
    }
}

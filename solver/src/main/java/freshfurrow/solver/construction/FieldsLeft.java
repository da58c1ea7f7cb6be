package freshfurrow.solver.construction;

import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.estimate.SeasonEstimate;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/** Fields that no planter has been given yet. */
final class FieldsLeft {
    private static final int NONE = -1;

    private final CompiledSeason season;
    private final SeasonEstimate estimate;
    private final double slowness;
    private final Fleet fleet;
    private final int[] left;
    private int count;

    /**
     * All fields of a season.
     *
     * @param slowness how many times as long as without a stop planting takes, 1 or more
     * @param fleet plants them
     */
    FieldsLeft(CompiledSeason season, SeasonEstimate estimate, double slowness, Fleet fleet) {
        this.season = season;
        this.estimate = estimate;
        this.slowness = slowness;
        this.fleet = fleet;
        left = IntStream.range(0, season.fieldCount()).toArray();
        count = left.length;
    }

    /**
     * Takes out the field that presses a planter most; empty when it may plant none of those left.
     *
     * @param from the field where the planter stands, or {@code SeasonEstimate.START}
     * @param clockS the planter's clock
     */
    OptionalInt take(NextField rule, int planter, int from, double clockS) {
        int next = next(rule, planter, from, clockS);
        if (next == NONE) {
            return OptionalInt.empty();
        }
        int field = left[next];
        count--;
        System.arraycopy(left, next + 1, left, next, count - next);
        return OptionalInt.of(field);
    }

    private int next(NextField rule, int planter, int from, double clockS) {
        FixedFirst fixed = new FixedFirst(season, estimate, slowness, planter, from, clockS);
        for (int i = 0; i < count && season.fixedDays() > 0; i++) {
            fixed.look(left[i]);
        }
        int best = NONE;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < count; i++) {
            if (fleet.plants(planter, left[i])) {
                double pressure = fixed.pressure(rule.pressure(planter, from, left[i], clockS), left[i]);
                if (best == NONE || pressure > most) {
                    best = i;
                    most = pressure;
                }
            }
        }
        return best;
    }
}

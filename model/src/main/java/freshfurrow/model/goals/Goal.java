package freshfurrow.model.goals;

import java.util.function.ToDoubleFunction;

/**
 * One thing a plan is judged by; less of it is better, 0 is best.
 *
 * @param name one or two words, unique among the goals of a season
 * @param unit of the amount
 * @param sentence what is counted
 * @param amount how much of it a season played out has, in {@code unit}, 0 or more
 * @param weight what one unit costs, in the unit of the level, 0 or more
 */
public record Goal(
        String name, Level level, String unit, String sentence, ToDoubleFunction<Counters> amount, double weight) {
    public Goal {
        if (!(weight >= 0)) {
            throw new IllegalArgumentException("goal " + name + " needs a weight of 0 or more, not " + weight);
        }
    }

    /** What it costs, in the unit of its level, 0 or more. */
    public double cost(Counters counters) {
        return weight * amount.applyAsDouble(counters);
    }
}

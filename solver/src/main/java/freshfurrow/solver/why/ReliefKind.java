package freshfurrow.solver.why;

import java.util.function.IntFunction;

/**
 * One thing that there could be more of, in steps.
 *
 * @param most so many steps at the most, 1 or more
 * @param steps the relief of so many steps, from 1
 */
record ReliefKind(int most, IntFunction<Relief> steps) {
    Relief of(int count) {
        return steps.apply(count);
    }
}

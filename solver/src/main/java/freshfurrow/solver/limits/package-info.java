/**
 * What holds a season back: short searches from a plan's own lists, with one resource made free at a time. No time is worked out
 * but by the timeline.
 */
@NullMarked
package freshfurrow.solver.limits;

import org.jspecify.annotations.NullMarked;

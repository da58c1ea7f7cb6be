/**
 * What holds a season back: a plan's own lists played out again with one resource made free at a time. Nothing here searches for
 * other lists, and no time is worked out but by the timeline.
 */
@NullMarked
package freshfurrow.solver.limits;

import org.jspecify.annotations.NullMarked;

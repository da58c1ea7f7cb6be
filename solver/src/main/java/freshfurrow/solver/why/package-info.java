/**
 * Why a field is planted when it is: the lists of a plan played out again with the field at other positions, or with more of one
 * thing. Nothing here searches for other lists, and no time is worked out but by the timeline.
 */
@NullMarked
package freshfurrow.solver.why;

import org.jspecify.annotations.NullMarked;

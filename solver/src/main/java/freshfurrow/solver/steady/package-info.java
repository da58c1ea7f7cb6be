/**
 * Keeping what crews were told for the days ahead, where that costs next to nothing. What is promised, and when a promise is broken, is the
 * season's and the timeline's to say.
 */
@NullMarked
package freshfurrow.solver.steady;

import org.jspecify.annotations.NullMarked;

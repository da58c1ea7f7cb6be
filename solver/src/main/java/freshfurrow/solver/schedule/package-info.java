/**
 * The planning model: a list of fields per planter, and its score, which is the timeline's or, to guide the search, that of an
 * estimate. No timing rule and no formula of the score belongs here.
 */
@NullMarked
package freshfurrow.solver.schedule;

import org.jspecify.annotations.NullMarked;

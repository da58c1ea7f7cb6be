/**
 * First lists for a season, made at once by simple rules with rough estimates. Which of them is best is for the timeline to
 * say; no score is worked out here.
 */
@NullMarked
package freshfurrow.solver.construction;

import org.jspecify.annotations.NullMarked;

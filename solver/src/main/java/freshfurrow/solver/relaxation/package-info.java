/**
 * A season eased to a linear program: each class adds rows for one thing that a season is short of, with the proof that every plan keeps
 * to them. What the least cost of the program says of a plan is for the bounds to tell.
 */
@NullMarked
package freshfurrow.solver.relaxation;

import org.jspecify.annotations.NullMarked;

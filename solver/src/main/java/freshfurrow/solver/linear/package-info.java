/**
 * Linear programs, and what is proven of their least cost whatever a solver library says. Nothing here knows of seasons.
 */
@NullMarked
package freshfurrow.solver.linear;

import org.jspecify.annotations.NullMarked;

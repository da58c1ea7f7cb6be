/**
 * Which fields, which planter, which order: the planning model and its search. It knows the model and its timeline; nothing
 * of files or screens.
 */
@NullMarked
package freshfurrow.solver;

import org.jspecify.annotations.NullMarked;

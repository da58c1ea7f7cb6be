/**
 * How lists get better: moves of fields within and between lists, and the annealing that accepts them. What is better is for
 * the score of the schedule to say.
 */
@NullMarked
package freshfurrow.solver.search;

import org.jspecify.annotations.NullMarked;

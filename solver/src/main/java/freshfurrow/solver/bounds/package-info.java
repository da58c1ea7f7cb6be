/**
 * What no plan of a season can do better, with the proof, and the best plan of all where a season is small enough to try every
 * one. How a season plays out is the timeline's to say; here is only what it cannot go beyond.
 */
@NullMarked
package freshfurrow.solver.bounds;

import org.jspecify.annotations.NullMarked;

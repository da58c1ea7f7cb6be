/**
 * Springs lived through: a plan carried out by someone who knows the weather so far, and of the weather to come no more than a
 * forecast. What is known decides the order of fields; all times come from the timeline. Nothing here makes weather.
 */
@NullMarked
package freshfurrow.solver.lived;

import org.jspecify.annotations.NullMarked;

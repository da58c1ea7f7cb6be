/**
 * What a plan is judged by: named goals, each with its level, weight and unit, that read counters of a season played out.
 * The score is their sum and nothing else; how a season plays out does not belong here.
 */
@NullMarked
package freshfurrow.model.goals;

import org.jspecify.annotations.NullMarked;

/**
 * What would be if: fields of a plan at other places of its lists, played out by the timeline at once. Nothing is searched for, and
 * nothing is written.
 */
@NullMarked
package freshfurrow.app.trial;

import org.jspecify.annotations.NullMarked;

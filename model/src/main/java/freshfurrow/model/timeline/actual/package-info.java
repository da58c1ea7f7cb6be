/**
 * How long things take as they turn out in one simulated season, where the season file says how much times vary. Knows what times may come out, and
 * nothing of what is done in them.
 */
@NullMarked
package freshfurrow.model.timeline.actual;

import org.jspecify.annotations.NullMarked;

/**
 * A plan checked against its season from first principles. It reads seasons and plans and never the timeline, so that an
 * error in the one cannot hide in the other.
 */
@NullMarked
package freshfurrow.model.audit;

import org.jspecify.annotations.NullMarked;

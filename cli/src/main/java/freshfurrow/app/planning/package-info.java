/** A season planned, and planned again under way: searched, bounded, audited, written. */
@NullMarked
package freshfurrow.app.planning;

import org.jspecify.annotations.NullMarked;

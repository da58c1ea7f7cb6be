/**
 * What many lived springs say of variants of a season: spreads, paired differences, chances, money. Nothing here plays a spring, and
 * nothing here reads or writes files.
 */
@NullMarked
package freshfurrow.model.compare;

import org.jspecify.annotations.NullMarked;

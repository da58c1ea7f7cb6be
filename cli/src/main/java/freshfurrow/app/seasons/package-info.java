/** Many seasons, planned one after the other: which they are, which of them are whose turn, and what came of each. */
@NullMarked
package freshfurrow.app.seasons;

import org.jspecify.annotations.NullMarked;

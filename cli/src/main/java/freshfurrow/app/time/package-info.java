/** When work ends, and what it took by the clock. */
@NullMarked
package freshfurrow.app.time;

import org.jspecify.annotations.NullMarked;

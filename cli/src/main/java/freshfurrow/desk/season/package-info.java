/**
 * The season that lies on the desk: where its files are, and what time it is there.
 */
@NullMarked
package freshfurrow.desk.season;

import org.jspecify.annotations.NullMarked;

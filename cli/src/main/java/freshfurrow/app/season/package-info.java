/** What can be said of a season before it is planned, as the timeline has it: its loads by themselves. */
@NullMarked
package freshfurrow.app.season;

import org.jspecify.annotations.NullMarked;

/** What a season's log teaches, and the variant of the season that is made of it. */
@NullMarked
package freshfurrow.app.learn;

import org.jspecify.annotations.NullMarked;

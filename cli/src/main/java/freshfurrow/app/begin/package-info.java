/** A season that is not there yet: questions, what was answered, and the files that are made of it. Knows no door. */
@NullMarked
package freshfurrow.app.begin;

import org.jspecify.annotations.NullMarked;

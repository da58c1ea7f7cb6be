/** A season begun at the desk: questions for its pages, and what comes of the answers. */
@NullMarked
package freshfurrow.desk.begin;

import org.jspecify.annotations.NullMarked;

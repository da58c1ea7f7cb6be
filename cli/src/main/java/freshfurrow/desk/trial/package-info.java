/**
 * Fields dragged about on a board of days and machines, and what the timeline says of it. What is tried is kept nowhere until it is
 * fixed in the season file.
 */
@NullMarked
package freshfurrow.desk.trial;

import org.jspecify.annotations.NullMarked;

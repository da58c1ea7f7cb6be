/**
 * The day's work by machine, to be ticked off, and what people say happened: each tap is a line of the season's log, written once
 * however often it is sent.
 */
@NullMarked
package freshfurrow.desk.today;

import org.jspecify.annotations.NullMarked;

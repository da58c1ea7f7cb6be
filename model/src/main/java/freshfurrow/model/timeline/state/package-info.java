/**
 * What changes while a season is played out, in one array that can be kept and put back, and who is told of it. What machines do, and
 * when, belongs elsewhere: a state only keeps it.
 */
@NullMarked
package freshfurrow.model.timeline.state;

import org.jspecify.annotations.NullMarked;

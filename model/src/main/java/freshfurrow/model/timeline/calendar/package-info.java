/**
 * Periods in which something may happen: working hours, open water, ground that bears a machine, as seconds since the season's first
 * midnight. What machines do in them belongs elsewhere.
 */
@NullMarked
package freshfurrow.model.timeline.calendar;

import org.jspecify.annotations.NullMarked;

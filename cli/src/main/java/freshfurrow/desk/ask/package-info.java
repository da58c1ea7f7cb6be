/**
 * What people ask of a plan and of a season: why a field is planted when it is, what holds the season back, whether another rig
 * would pay; and what they take along: crew sheets, calendar, tables, map. The answers are those of the command line, word for word.
 */
@NullMarked
package freshfurrow.desk.ask;

import org.jspecify.annotations.NullMarked;

/**
 * A plan as files that other programs read: calendars (RFC 5545), tables (RFC 4180) and maps (RFC 7946). Each is a text made
 * of a season and its plan; writing it to disk is for the commands.
 */
@NullMarked
package freshfurrow.cli.export;

import org.jspecify.annotations.NullMarked;

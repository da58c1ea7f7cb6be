/**
 * Why a field is planted when it is, as plain text. Says what the records of plan and solver hold; nothing here plays a season
 * out, and nothing reads or writes files.
 */
@NullMarked
package freshfurrow.cli.why;

import org.jspecify.annotations.NullMarked;

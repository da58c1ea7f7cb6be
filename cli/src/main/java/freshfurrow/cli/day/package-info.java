/**
 * What a plan says of one machine on one day: its work, what it has on board, what has to be used by when. Looked up and
 * added up from the plan; no time is worked out here, and no words and layout belong here.
 */
@NullMarked
package freshfurrow.cli.day;

import org.jspecify.annotations.NullMarked;

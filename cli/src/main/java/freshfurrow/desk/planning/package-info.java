/**
 * A plan made at the desk: searched for in the background, held against the plan before, and taken or left.
 */
@NullMarked
package freshfurrow.desk.planning;

import org.jspecify.annotations.NullMarked;

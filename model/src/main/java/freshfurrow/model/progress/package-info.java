/**
 * How far a season has come: what a plan has done by some moment, and where that leaves fields, compost and machines. It reads seasons
 * and plans; when things happen is the plan's to say.
 */
@NullMarked
package freshfurrow.model.progress;

import org.jspecify.annotations.NullMarked;

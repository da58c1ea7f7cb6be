/**
 * The compiled season: what does not change while it is played out, as tables of whole numbers that any number of timelines and threads
 * share. Nothing that changes belongs here.
 */
@NullMarked
package freshfurrow.model.timeline.tables;

import org.jspecify.annotations.NullMarked;

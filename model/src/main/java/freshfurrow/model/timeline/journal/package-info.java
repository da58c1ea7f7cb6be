/**
 * Writes down what happens while a season is played out, as activities, loads and batches. Nothing is decided here.
 */
@NullMarked
package freshfurrow.model.timeline.journal;

import org.jspecify.annotations.NullMarked;

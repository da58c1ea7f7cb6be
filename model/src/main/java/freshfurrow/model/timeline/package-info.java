/**
 * The one computation: lists of fields per planter played out into times, loads and batches. Two uses share it: a hot
 * path that only counts, and a record that becomes the plan. No file, screen or search belongs here.
 */
@NullMarked
package freshfurrow.model.timeline;

import org.jspecify.annotations.NullMarked;

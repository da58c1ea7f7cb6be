/**
 * The one computation: lists of fields per planter played out into times, loads and batches. Two uses share it: a hot
 * path that only counts, and a record that becomes the plan. No file, screen or search belongs here.
 *
 * <p>This package is the door, and plays. What it plays with lies in packages below it, each of which knows only those before it:
 * {@code calendar}, {@code tables}, {@code state}, {@code planters}, {@code rigs}, {@code mix}, {@code load}; {@code journal} knows
 * the first three. From outside only this package is used, and {@link freshfurrow.model.timeline.tables.Leeway}.
 */
@NullMarked
package freshfurrow.model.timeline;

import org.jspecify.annotations.NullMarked;

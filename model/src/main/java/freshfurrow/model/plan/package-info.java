/**
 * What a plan says: activities, loads, batches and totals, and their JSON file. No rule of the season is decided here.
 */
@NullMarked
package freshfurrow.model.plan;

import org.jspecify.annotations.NullMarked;

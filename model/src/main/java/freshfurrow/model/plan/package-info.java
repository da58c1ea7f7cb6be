/**
 * What a plan says: activities, loads, batches and totals, and their JSON file; whether that file is whole, and names only what its season has.
 * Whether a plan keeps the rules of the season is not decided here.
 */
@NullMarked
package freshfurrow.model.plan;

import org.jspecify.annotations.NullMarked;

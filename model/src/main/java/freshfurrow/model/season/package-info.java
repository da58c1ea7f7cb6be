/**
 * What a season is: fields, planters, rigs, water points, compost, recipes, hours and rain, as immutable records in SI
 * units that are valid once made. A record is made out of another by its {@code change()}, a small one by a {@code with}; no
 * constructor call repeats the parts of another record, as the next part would be forgotten there. What has an id is looked up in
 * the season. Nothing here reads files, measures distance or knows how a season plays out.
 */
@NullMarked
package freshfurrow.model.season;

import org.jspecify.annotations.NullMarked;

/**
 * What a season is: fields, planters, rigs, water points, compost, recipes, hours and rain, as immutable records in SI
 * units that are valid once made. Nothing here reads files, measures distance or knows how a season plays out.
 */
@NullMarked
package freshfurrow.model.season;

import org.jspecify.annotations.NullMarked;

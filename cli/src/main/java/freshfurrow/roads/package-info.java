/**
 * Ways of farm machines on a map of OpenStreetMap, found with GraphHopper: offered as the service of {@code model/roads}, and known to
 * nobody else, so that none of it is loaded where a season has no map of roads. Which roads are open to farm machines, and which they
 * rather leave, stands in {@link freshfurrow.roads.FarmTags}.
 */
@NullMarked
package freshfurrow.roads;

import org.jspecify.annotations.NullMarked;

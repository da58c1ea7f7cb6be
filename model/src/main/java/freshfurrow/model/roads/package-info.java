/**
 * Distances between places, measured on a map of roads: who is asked to measure them, and how they are kept beside the season, so that
 * they are measured once. How a map is read and ways are found on it is for whoever offers the service {@link
 * freshfurrow.model.roads.RoadSurvey}; what is wrong with a season's places, and where that stands, is for {@code read}.
 */
@NullMarked
package freshfurrow.model.roads;

import org.jspecify.annotations.NullMarked;

package freshfurrow.model.roads;

import freshfurrow.model.season.GeoPoint;
import java.util.List;

/** Places on a map of roads, by their positions from 0. May be asked from several threads at once. */
public interface Surveyed {
    /** Whether a road is within {@link RoadSurvey#MOST_OFF_ROAD_M} of a place. */
    boolean isNearRoad(int place);

    /**
     * How far it is from a place that is near a road to each of those that are: straight to the nearest road, along roads, and straight
     * from there.
     *
     * @return m, by position; infinite where there is no way, or no road near
     */
    double[] metresFrom(int place);

    /** The way from one place to another, both ends among it; empty when there is none. Bends of less than 5 m are left out. */
    List<GeoPoint> way(int from, int to);
}

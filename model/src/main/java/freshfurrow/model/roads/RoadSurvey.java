package freshfurrow.model.roads;

import freshfurrow.model.season.GeoPoint;
import java.util.List;
import java.util.Optional;
import java.util.ServiceLoader;

/** Finds ways on a map of roads. A service, so that nothing of it is loaded where no season asks for it. */
public interface RoadSurvey {
    /** A place farther from all roads than this is off the map, m. */
    double MOST_OFF_ROAD_M = 1_000;

    /** The one that is there, if any is. */
    static Optional<RoadSurvey> found() {
        return ServiceLoader.load(RoadSurvey.class).findFirst();
    }

    /**
     * Puts places on a map.
     *
     * @param size what has to fit
     * @throws UnusableMap when the map cannot be read
     */
    Surveyed survey(RoadMap map, MachineSize size, List<GeoPoint> places) throws UnusableMap;
}

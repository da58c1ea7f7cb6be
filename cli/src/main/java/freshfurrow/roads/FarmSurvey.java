package freshfurrow.roads;

import freshfurrow.model.roads.MachineSize;
import freshfurrow.model.roads.RoadMap;
import freshfurrow.model.roads.RoadSurvey;
import freshfurrow.model.roads.Surveyed;
import freshfurrow.model.roads.UnusableMap;
import freshfurrow.model.season.GeoPoint;
import java.util.List;

/** Finds ways for farm machines. */
public final class FarmSurvey implements RoadSurvey {
    /** As a service. */
    public FarmSurvey() {}

    @Override
    public Surveyed survey(RoadMap map, MachineSize size, List<GeoPoint> places) throws UnusableMap {
        RoadGraph roads = KeptGraphs.of(map);
        FarmWeighting weighting = new FarmWeighting(roads.values(), size);
        return new PlacesOnRoads(roads, weighting, places);
    }
}

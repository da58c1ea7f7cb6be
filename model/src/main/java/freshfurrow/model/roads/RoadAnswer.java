package freshfurrow.model.roads;

import freshfurrow.model.season.FromTo;
import java.util.List;

/** What comes of measuring the ways between a season's places. */
public sealed interface RoadAnswer {
    /** All of them. */
    record All(MeasuredRoads roads) implements RoadAnswer {}

    /** Some places are far from every road. */
    record OffRoad(List<String> places) implements RoadAnswer {
        public OffRoad {
            places = List.copyOf(places);
        }
    }

    /** All are near a road, but there is no way from some to others. */
    record NoWay(List<FromTo> ways) implements RoadAnswer {
        public NoWay {
            ways = List.copyOf(ways);
        }
    }
}

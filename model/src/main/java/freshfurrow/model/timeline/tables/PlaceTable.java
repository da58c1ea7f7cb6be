package freshfurrow.model.timeline.tables;

import freshfurrow.model.season.Distances;
import freshfurrow.model.season.PlaceIndex;
import freshfurrow.model.season.Season;
import freshfurrow.model.travel.RoadTable;

/** Places and the roads between them: fields first, in the season's order, then water points and named places. */
public final class PlaceTable {
    private final PlaceIndex index;
    private final String[] ids;
    private final RoadTable roads;

    PlaceTable(Season season) {
        index = PlaceIndex.of(season);
        ids = index.ids().toArray(String[]::new);
        roads = RoadTable.of(index.ids(), season.distances());
    }

    public int count() {
        return ids.length;
    }

    public String id(int place) {
        return ids[place];
    }

    /** The place of that id. */
    int positionOf(String id) {
        return index.positionOf(id);
    }

    /** Distance by road, whole metres, rounded up. */
    public int metres(int from, int to) {
        return roads.metres(from, to);
    }

    /** All distances by road as they are played, without measuring any of them again. */
    public Distances roads() {
        return roads;
    }
}

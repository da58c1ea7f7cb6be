package freshfurrow.roads;

import java.util.ArrayList;
import java.util.List;

/** Roads around every square of the same width, as in the plains. */
public final class GridMap {
    private GridMap() {}

    /** The text of a map of them, as OpenStreetMap XML. */
    public static String xml(double south, double west, double north, double east, double step) {
        return of(south, west, north, east, step).xml();
    }

    /**
     * A map of them.
     *
     * @param step degrees from one road to the next
     */
    static OsmMap of(double south, double west, double north, double east, double step) {
        OsmMap map = new OsmMap();
        int rows = (int) Math.round((north - south) / step) + 1;
        int columns = (int) Math.round((east - west) / step) + 1;
        List<List<Integer>> ways = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            List<Integer> way = new ArrayList<>();
            for (int column = 0; column < columns; column++) {
                map.point(row * columns + column + 1, south + row * step, west + column * step);
                way.add(row * columns + column + 1);
            }
            ways.add(way);
        }
        for (int column = 0; column < columns; column++) {
            List<Integer> way = new ArrayList<>();
            for (int row = 0; row < rows; row++) {
                way.add(row * columns + column + 1);
            }
            ways.add(way);
        }
        ways.forEach(way -> map.way(way, "highway=unclassified", "surface=gravel"));
        return map;
    }
}

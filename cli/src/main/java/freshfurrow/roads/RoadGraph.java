package freshfurrow.roads;

import com.graphhopper.reader.osm.OSMReader;
import com.graphhopper.routing.OSMReaderConfig;
import com.graphhopper.routing.util.OSMParsers;
import com.graphhopper.storage.BaseGraph;
import com.graphhopper.storage.Directory;
import com.graphhopper.storage.index.LocationIndexTree;
import com.graphhopper.util.shapes.BBox;
import java.io.IOException;
import java.nio.file.Path;

/**
 * Roads as a graph, with an index of where they are.
 *
 * @param values what is known of each stretch
 */
record RoadGraph(BaseGraph graph, LocationIndexTree index, RoadValues values) {
    /** Width of a cell of the index, m. */
    private static final int CELL_M = 300;

    /** As many cells around a place as are looked at for a road: more than 1,000 m. */
    private static final int CELLS_AROUND = 6;

    private static final double BEYOND_DEGREES = 0.01;

    /** Reads a map into a directory, and writes it there if the directory is one on a disk. */
    static RoadGraph imported(Path map, Directory directory) throws IOException {
        RoadValues values = new RoadValues();
        BaseGraph graph = new BaseGraph.Builder(values.all).setDir(directory).create();
        OSMParsers parsers = new OSMParsers().addWayTagParser(new FarmTags(values));
        OSMReaderConfig config = new OSMReaderConfig().setParseWayNames(false);
        new OSMReader(graph, parsers, config).setFile(map.toFile()).readGraph();
        widen(graph.getBounds());
        LocationIndexTree index = index(graph, directory);
        index.prepareIndex();
        graph.flush();
        return new RoadGraph(graph, index, values);
    }

    /** The index misses roads that run along the edge of the map. */
    private static void widen(BBox bounds) {
        bounds.update(bounds.minLat - BEYOND_DEGREES, bounds.minLon - BEYOND_DEGREES);
        bounds.update(bounds.maxLat + BEYOND_DEGREES, bounds.maxLon + BEYOND_DEGREES);
    }

    /** @throws IllegalStateException when it was written otherwise */
    static RoadGraph loaded(Directory directory) {
        RoadValues values = new RoadValues();
        BaseGraph graph = new BaseGraph.Builder(values.all).setDir(directory).build();
        LocationIndexTree index = null;
        if (graph.loadExisting()) {
            index = index(graph, directory);
        }
        if (index == null || !index.loadExisting()) {
            throw new IllegalStateException("no graph in " + directory.getLocation());
        }
        return new RoadGraph(graph, index, values);
    }

    private static LocationIndexTree index(BaseGraph graph, Directory directory) {
        return new LocationIndexTree(graph, directory)
                .setMinResolutionInMeter(CELL_M)
                .setMaxRegionSearch(CELLS_AROUND);
    }
}

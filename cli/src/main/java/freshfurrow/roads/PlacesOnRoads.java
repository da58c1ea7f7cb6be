package freshfurrow.roads;

import com.graphhopper.routing.querygraph.QueryGraph;
import com.graphhopper.storage.index.Snap;
import com.graphhopper.util.DistanceCalcEarth;
import com.graphhopper.util.FetchMode;
import com.graphhopper.util.PointList;
import com.graphhopper.util.RamerDouglasPeucker;
import freshfurrow.model.roads.RoadSurvey;
import freshfurrow.model.roads.Surveyed;
import freshfurrow.model.season.GeoPoint;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The places of a season, each at the point of a road that is nearest to it. */
final class PlacesOnRoads implements Surveyed {
    private static final double LEAST_BEND_M = 5;

    private final List<GeoPoint> places;
    private final List<Snap> snaps = new ArrayList<>();
    private final Set<Integer> nodes = new HashSet<>();
    private final FarmWeighting weighting;
    private final QueryGraph graph;

    PlacesOnRoads(RoadGraph roads, FarmWeighting weighting, List<GeoPoint> places) {
        this.places = places;
        this.weighting = weighting;
        MainRoads main = new MainRoads(roads.graph(), weighting);
        places.forEach(place -> snaps.add(roads.index().findClosest(place.lat(), place.lon(), main)));
        List<Snap> found = snaps.stream().filter(Snap::isValid).toList();
        graph = QueryGraph.create(roads.graph(), found);
        found.forEach(snap -> nodes.add(snap.getClosestNode()));
    }

    @Override
    public boolean isNearRoad(int place) {
        return snaps.get(place).isValid() && offRoadM(place) <= RoadSurvey.MOST_OFF_ROAD_M;
    }

    @Override
    public double[] metresFrom(int place) {
        WaysFrom ways = waysFrom(place);
        double[] metres = new double[places.size()];
        for (int to = 0; to < metres.length; to++) {
            boolean same = places.get(to).equals(places.get(place));
            metres[to] = same ? 0 : isNearRoad(to) ? metres(ways, place, to) : Double.POSITIVE_INFINITY;
        }
        return metres;
    }

    private double metres(WaysFrom ways, int from, int to) {
        return offRoadM(from) + ways.metres(snaps.get(to).getClosestNode()) + offRoadM(to);
    }

    @Override
    public List<GeoPoint> way(int from, int to) {
        if (!isNearRoad(from) || !isNearRoad(to)) {
            return List.of();
        }
        WaysFrom ways = new WaysFrom(graph, weighting, node(from), Set.of(node(to)));
        if (Double.isInfinite(ways.metres(node(to)))) {
            return List.of();
        }
        PointList line = new PointList();
        add(line, places.get(from));
        line.add(snaps.get(from).getSnappedPoint());
        ways.way(node(to))
                .forEach(stretch -> line.add(graph.getEdgeIteratorState(stretch.edge(), stretch.node())
                        .fetchWayGeometry(FetchMode.PILLAR_AND_ADJ)));
        add(line, places.get(to));
        new RamerDouglasPeucker().setMaxDistance(LEAST_BEND_M).simplify(line);
        List<GeoPoint> points = new ArrayList<>();
        line.forEach(point -> points.add(new GeoPoint(point.lat, point.lon)));
        return points;
    }

    private static void add(PointList line, GeoPoint point) {
        line.add(point.lat(), point.lon());
    }

    private WaysFrom waysFrom(int place) {
        return new WaysFrom(graph, weighting, node(place), nodes);
    }

    private int node(int place) {
        return snaps.get(place).getClosestNode();
    }

    /** Straight to the road, m. */
    private double offRoadM(int place) {
        GeoPoint at = places.get(place);
        var road = snaps.get(place).getSnappedPoint();
        return DistanceCalcEarth.DIST_EARTH.calcDist(at.lat(), at.lon(), road.lat, road.lon);
    }
}

package freshfurrow.model.read;

import freshfurrow.model.quantity.Kind;
import freshfurrow.model.read.tree.FileProblem;
import freshfurrow.model.read.tree.Node;
import freshfurrow.model.roads.MachineSize;
import freshfurrow.model.roads.MeasuredRoads;
import freshfurrow.model.roads.RoadAnswer;
import freshfurrow.model.roads.RoadMeasuring;
import freshfurrow.model.roads.UnusableMap;
import freshfurrow.model.season.Distances;
import freshfurrow.model.season.FromTo;
import freshfurrow.model.season.GeoPoint;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** How far apart places are by a map of roads. */
final class RoadsReader {
    private static final Range WIDTH = Range.between(0.5, 12.2, "1.7 to 40 ft (0.5 to 12.2 m)");
    private static final Range WEIGHT = Range.between(100, 50_000, "221 to 110,000 lb (0.1 to 50 t)");
    private static final String NEAR = "1,000 m (0.6 mi)";
    private static final int NAMED_WAYS = 3;

    private final SeasonFolder folder;
    private final Problems problems;
    private final Keys travel;

    RoadsReader(SeasonFolder folder, Problems problems, Keys travel) {
        this.folder = folder;
        this.problems = problems;
        this.travel = travel;
    }

    /** @param placesKnown whether all files that declare places could be read */
    Optional<Distances> read(Places places, boolean placesKnown) {
        int before = problems.count();
        MachineSize size = size();
        Optional<Node> roads = travel.node("roads");
        if (roads.isEmpty()) {
            return Optional.empty();
        }
        if (!(roads.get() instanceof Node.Text name)) {
            problems.add(roads.get().place(), "is not a file name", "name a map, like roads: county.osm.pbf");
            return Optional.empty();
        }
        Map<String, GeoPoint> points = new LinkedHashMap<>();
        places.ids().forEach(id -> places.at(id).ifPresent(point -> points.put(id, point)));
        if (!placesKnown || points.size() < places.ids().size() || problems.count() > before) {
            return Optional.empty();
        }
        if (points.size() > RoadMeasuring.MOST_PLACES) {
            problems.add(
                    name.place(),
                    "there are " + points.size() + " places, and roads are measured between at most 2,000",
                    "use roadFactor or a matrix");
            return Optional.empty();
        }
        try {
            return measured(name, size, points, places);
        } catch (FileProblem e) {
            problems.add(e);
            return Optional.empty();
        }
    }

    private MachineSize size() {
        return new MachineSize(
                figure(travel.optionalQuantity("width", Kind.LENGTH, WIDTH)),
                figure(travel.optionalQuantity("weight", Kind.MASS, WEIGHT)));
    }

    private static OptionalDouble figure(Optional<Double> figure) {
        return figure.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    private Optional<Distances> measured(Node.Text name, MachineSize size, Map<String, GeoPoint> points, Places places)
            throws FileProblem {
        Path map = folder.map(name);
        try {
            RoadAnswer answer = new RoadMeasuring(map, folder.measured(), size, points).measured();
            if (answer instanceof RoadAnswer.All all) {
                MeasuredRoads roads = all.roads();
                folder.remember(map, roads.text());
                return Optional.of(roads);
            } else if (answer instanceof RoadAnswer.OffRoad off) {
                off.places()
                        .forEach(
                                id -> problems.add(
                                        places.declaredAt(id),
                                        id + " is more than " + NEAR + " from every road of " + name.text(),
                                        "put its lat and lon where machines leave the road for it, or take a map that reaches as far"));
            } else if (answer instanceof RoadAnswer.NoWay none) {
                noWay(name, none.ways(), size);
            }
            return Optional.empty();
        } catch (UnusableMap e) {
            throw new FileProblem(name.place(), "'" + name.text() + "' " + e.reason(), e.remedy());
        }
    }

    private void noWay(Node.Text name, List<FromTo> ways, MachineSize size) {
        String named = ways.stream()
                .limit(NAMED_WAYS)
                .map(way -> way.from() + " to " + way.to())
                .collect(Collectors.joining(", "));
        boolean limited = size.widthM().isPresent() || size.weightKg().isPresent();
        problems.add(
                name.place(),
                "there is no way on it from " + named
                        + (ways.size() > NAMED_WAYS ? " and for " + (ways.size() - NAMED_WAYS) + " more pairs" : ""),
                "take a map that holds all roads between them"
                        + (limited
                                ? ", or look at width and weight, which close roads and bridges with a lower limit"
                                : "")
                        + ", or use roadFactor or a matrix");
    }
}

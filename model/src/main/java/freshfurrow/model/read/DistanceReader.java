package freshfurrow.model.read;

import freshfurrow.model.quantity.Kind;
import freshfurrow.model.read.tree.CsvTable;
import freshfurrow.model.read.tree.FileProblem;
import freshfurrow.model.read.tree.Node;
import freshfurrow.model.season.Distances;
import freshfurrow.model.travel.GeodesicDistances;
import freshfurrow.model.travel.MatrixDistances;
import freshfurrow.model.travel.MatrixDistances.Pair;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** How far apart places are: by the geodesic times a road factor, by a table, or by a map of roads. */
final class DistanceReader {
    private static final double USUAL_ROAD_FACTOR = 1.3;
    private static final Range ROAD_FACTOR = new Range(1, 10, "a number from 1 to 10", "1.3");
    private static final Range DISTANCE = Range.from0(2_000_000, "0 to 1,200 mi (2,000 km)");
    private static final int NAMED_PAIRS = 3;

    private final SeasonFolder folder;
    private final Problems problems;
    private final UnitsSeen units;

    DistanceReader(SeasonFolder folder, Problems problems, UnitsSeen units) {
        this.folder = folder;
        this.problems = problems;
        this.units = units;
    }

    /** Whether the season's distances come from a table, so that places need no coordinates. */
    static boolean hasMatrix(Keys season) {
        return season.keys("travel").map(travel -> travel.has("matrix")).orElse(false);
    }

    /** @param placesKnown whether all files that declare places could be read, so that a place that is not known is a mistake */
    Optional<Distances> read(Keys season, Places places, boolean placesKnown) {
        Optional<Keys> travel = season.keys("travel");
        Optional<Node> matrix = travel.flatMap(keys -> keys.node("matrix"));
        double factor =
                travel.flatMap(keys -> keys.number("roadFactor", ROAD_FACTOR)).orElse(USUAL_ROAD_FACTOR);
        boolean byRoads = travel.isPresent() && travel.get().has("roads");
        travel.ifPresent(keys -> checkTogether(keys, byRoads, matrix.isPresent()));
        if (byRoads && matrix.isEmpty()) {
            return new RoadsReader(folder, problems, travel.get()).read(places, placesKnown);
        }
        if (matrix.isEmpty()) {
            return Optional.of(new GeodesicDistances(places.points(), factor));
        }
        if (!(matrix.get() instanceof Node.Text name)) {
            problems.add(matrix.get().place(), "is not a file name", "name a table, like matrix: distances.csv");
            return Optional.empty();
        }
        try {
            CsvTable table = CsvTable.read(folder.read(name, SeasonFolder.MAP_MIB));
            return placesKnown ? table(table, places) : Optional.empty();
        } catch (FileProblem e) {
            problems.add(e);
            return Optional.empty();
        }
    }

    private static void checkTogether(Keys travel, boolean byRoads, boolean byMatrix) {
        if (byMatrix && travel.has("roadFactor")) {
            travel.problem(
                    "roadFactor", "cannot be used with a table of distances", "keep either roadFactor or matrix");
        }
        if (byRoads && byMatrix) {
            travel.problem("roads", "cannot be used with a table of distances", "keep either roads or matrix");
        }
        if (byRoads && travel.has("roadFactor")) {
            travel.problem("roadFactor", "cannot be used with a map of roads", "keep either roadFactor or roads");
        }
        for (String key : List.of("width", "weight")) {
            if (travel.has(key) && !byRoads) {
                travel.problem(
                        key, "says nothing without a map of roads", "add roads: county.osm.pbf, or leave it out");
            }
        }
        travel.refuseOthers();
    }

    private Optional<Distances> table(CsvTable table, Places places) throws FileProblem {
        if (!table.columns().equals(List.of("from", "to", "distance"))) {
            throw new FileProblem(
                    table.place(),
                    "has the columns " + String.join(", ", table.columns()),
                    "start it with from,to,distance (mi) or from,to,distance (km)");
        }
        FieldFiles.checkUnit(table, "distance", Kind.LENGTH);
        Map<Pair, Double> metres = new HashMap<>();
        int before = problems.count();
        for (Node.Mapping row : table.rows()) {
            Keys keys = Keys.of(row, problems, units);
            Optional<String> from = known(keys, "from", places);
            Optional<String> to = known(keys, "to", places);
            Optional<Double> distance = keys.quantity("distance", Kind.LENGTH, DISTANCE);
            if (from.isPresent() && from.equals(to)) {
                problems.add(row.place(), "from and to are both " + from.get(), "leave out the row; the distance is 0");
            } else if (from.isPresent() && to.isPresent() && distance.isPresent()) {
                Double twin = metres.put(new Pair(from.get(), to.get()), distance.get());
                if (twin != null && !twin.equals(distance.get())) {
                    problems.add(
                            row.place(),
                            "another row gives a different distance from " + from.get() + " to " + to.get(),
                            "keep one of them; distances hold in both directions");
                }
            }
        }
        missing(table, metres, places);
        return problems.count() > before ? Optional.empty() : Optional.of(new MatrixDistances(metres));
    }

    private Optional<String> known(Keys keys, String key, Places places) {
        Optional<String> id = keys.neededText(key, "yard");
        if (id.isPresent() && !places.ids().contains(id.get())) {
            keys.problem(key, "there is no place " + id.get(), FieldReader.unknown(id.get(), places.ids()));
            return Optional.empty();
        }
        return id;
    }

    private void missing(CsvTable table, Map<Pair, Double> metres, Places places) {
        List<String> ids = new ArrayList<>(places.ids());
        List<String> missing = new ArrayList<>();
        int count = 0;
        for (int i = 0; i < ids.size(); i++) {
            for (int j = 0; j < i; j++) {
                if (!metres.containsKey(new Pair(ids.get(i), ids.get(j)))) {
                    count++;
                    if (missing.size() < NAMED_PAIRS) {
                        missing.add(ids.get(j) + " to " + ids.get(i));
                    }
                }
            }
        }
        if (count > 0) {
            String named = String.join(", ", missing) + (count > NAMED_PAIRS ? " and more" : "");
            problems.add(
                    table.place(),
                    (count == 1 ? "one pair of places has" : count + " pairs of places have") + " no distance: "
                            + named,
                    "add a row for each pair; one direction is enough");
        }
    }
}

package freshfurrow.model.roads;

import freshfurrow.model.season.FromTo;
import freshfurrow.model.season.GeoPoint;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The ways between the places of a season, measured once for a map, places and a size of machines. A map that is not there any more is
 * not needed where they were measured before.
 */
public final class RoadMeasuring {
    /** Of which all ways are still measured in minutes. */
    public static final int MOST_PLACES = 2_000;

    private static final int KEY_LETTERS = 16;

    private final Path file;
    private final Path kept;
    private final MachineSize size;
    private final List<String> ids;
    private final List<GeoPoint> points;

    /**
     * Measures on a map.
     *
     * @param file the map
     * @param kept the folder for what is measured, whether it is there or not
     * @param places by id; at most {@link #MOST_PLACES}
     */
    public RoadMeasuring(Path file, Path kept, MachineSize size, Map<String, GeoPoint> places) {
        this.file = file;
        this.kept = kept;
        this.size = size;
        ids = List.copyOf(places.keySet());
        points = List.copyOf(places.values());
    }

    /**
     * Measures, or takes what was measured before.
     *
     * @throws UnusableMap when the map cannot be read, or is not there and was never measured on
     */
    public RoadAnswer measured() throws UnusableMap {
        String key = key();
        Path table = kept.resolve(key + ".txt");
        Optional<KeptTable> before = KeptTable.read(table, ids.size());
        Optional<RoadMap> map = map();
        if (map.isEmpty() && before.isEmpty()) {
            throw new UnusableMap("does not exist", "check the name and the folder");
        }
        String sha256 =
                map.map(RoadMap::sha256).orElseGet(() -> before.orElseThrow().map());
        KeptWays ways = new KeptWays(kept.resolve(key + ".ways.txt"), sha256, () -> survey(map));
        if (before.isPresent() && before.get().map().equals(sha256)) {
            return new RoadAnswer.All(new MeasuredRoads(ids, before.get().metres(), size, ways));
        }
        Surveyed surveyed = survey(map);
        RoadNews news = RoadNews.found();
        news.measures(ids.size());
        RoadAnswer answer;
        try {
            answer = measure(surveyed, ways);
        } finally {
            news.done();
        }
        if (answer instanceof RoadAnswer.All all) {
            all.roads().keptOf(sha256).write(table);
        }
        return answer;
    }

    private Optional<RoadMap> map() throws UnusableMap {
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        if (!Files.isRegularFile(file)) {
            throw new UnusableMap("is not an ordinary file", "name a file that holds a map");
        }
        try {
            return Optional.of(RoadMap.of(file, kept));
        } catch (IOException e) {
            throw new UnusableMap("cannot be read", "check the disk, and give yourself permission to read it");
        }
    }

    private Surveyed survey(Optional<RoadMap> map) throws UnusableMap {
        Optional<RoadSurvey> survey = RoadSurvey.found();
        if (map.isEmpty() || survey.isEmpty()) {
            throw new UnusableMap("cannot be read here", "use roadFactor or a matrix instead");
        }
        return survey.get().survey(map.get(), size, points);
    }

    private RoadAnswer measure(Surveyed surveyed, KeptWays ways) {
        int places = ids.size();
        List<String> offRoad = IntStream.range(0, places)
                .filter(place -> !surveyed.isNearRoad(place))
                .mapToObj(ids::get)
                .toList();
        if (!offRoad.isEmpty()) {
            return new RoadAnswer.OffRoad(offRoad);
        }
        double[][] directed = IntStream.range(0, places)
                .parallel()
                .mapToObj(surveyed::metresFrom)
                .toArray(double[][]::new);
        List<FromTo> missing = new ArrayList<>();
        List<int[]> metres = new ArrayList<>();
        for (int a = 0; a < places; a++) {
            int[] row = new int[a];
            for (int b = 0; b < a; b++) {
                double longer = Math.max(directed[a][b], directed[b][a]);
                row[b] = (int) Math.ceil(longer);
                if (longer == Double.POSITIVE_INFINITY) {
                    boolean there = directed[b][a] == Double.POSITIVE_INFINITY;
                    missing.add(new FromTo(ids.get(there ? b : a), ids.get(there ? a : b)));
                }
            }
            metres.add(row);
        }
        return missing.isEmpty()
                ? new RoadAnswer.All(new MeasuredRoads(ids, metres, size, ways))
                : new RoadAnswer.NoWay(missing);
    }

    /** Of all that the distances depend on but the map, so that they are found where it is no longer there. */
    private String key() {
        StringBuilder text = new StringBuilder(String.valueOf(file.getFileName()) + "\n" + size);
        points.forEach(
                point -> text.append('\n').append(point.lat()).append(' ').append(point.lon()));
        try {
            byte[] digest =
                    MessageDigest.getInstance("SHA-256").digest(text.toString().getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest).substring(0, KEY_LETTERS);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}

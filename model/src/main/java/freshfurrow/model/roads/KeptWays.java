package freshfurrow.model.roads;

import freshfurrow.model.files.IfThere;
import freshfurrow.model.files.NewFile;
import freshfurrow.model.files.WriteTurn;
import freshfurrow.model.season.GeoPoint;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Where the ways lead that somebody wanted to see: in a file beside the distances, to which those are added that are found. A file that
 * is of another map, or is no such file, counts as empty; where no map is there any more, what the file holds is all that is known.
 */
final class KeptWays {
    private static final String TITLE = "freshfurrow ways 1";

    private final Path file;
    private final String map;
    private final Opening opening;

    /**
     * Ways on a map.
     *
     * @param map the SHA-256 of the map
     */
    KeptWays(Path file, String map, Opening opening) {
        this.file = file;
        this.map = map;
        this.opening = opening;
    }

    /** Puts the places on the map. */
    @FunctionalInterface
    interface Opening {
        Surveyed surveyed() throws UnusableMap;
    }

    /** From one place to another, by their positions. */
    record Way(int from, int to) {
        private static Way of(String text) {
            String[] ends = text.split(" ", -1);
            return new Way(Integer.parseInt(ends[0]), Integer.parseInt(ends[1]));
        }

        @Override
        public String toString() {
            return from + " " + to;
        }
    }

    /** Those of the ways that are known or can be found. */
    synchronized Map<Way, List<GeoPoint>> of(Set<Way> wanted) {
        Map<Way, String> lines = read();
        if (!lines.keySet().containsAll(wanted)) {
            find(wanted, lines);
        }
        return wanted.stream()
                .filter(lines::containsKey)
                .collect(Collectors.toMap(
                        way -> way, way -> PointLine.points(lines.get(way)), (one, same) -> one, LinkedHashMap::new));
    }

    private void find(Set<Way> wanted, Map<Way, String> lines) {
        try {
            Surveyed surveyed = opening.surveyed();
            for (Way way : wanted) {
                lines.computeIfAbsent(way, missing -> PointLine.text(surveyed.way(missing.from(), missing.to())));
            }
            write(lines);
        } catch (UnusableMap e) {
            return; // it was there when the distances were measured; without it there is less to draw
        }
    }

    private Map<Way, String> read() {
        Map<Way, String> ways = new LinkedHashMap<>();
        try {
            List<String> lines = Files.readAllLines(file);
            if (lines.size() >= 2 && lines.get(0).equals(TITLE) && lines.get(1).equals(map)) {
                for (String line : lines.subList(2, lines.size())) {
                    String[] parts = line.split(":", 2);
                    PointLine.points(parts[1]);
                    ways.put(Way.of(parts[0]), parts[1]);
                }
            }
            return ways;
        } catch (IOException | IllegalArgumentException | IndexOutOfBoundsException e) {
            return new LinkedHashMap<>();
        }
    }

    private void write(Map<Way, String> ways) {
        StringBuilder text = new StringBuilder(TITLE + "\n" + map + "\n");
        Map<String, String> sorted = new TreeMap<>();
        ways.forEach((way, line) -> sorted.put(way.toString(), line));
        sorted.forEach((way, line) -> text.append(way).append(':').append(line).append('\n'));
        try {
            WriteTurn.writeAll(List.of(NewFile.of(file, text.toString(), IfThere.REPLACE)));
        } catch (IOException e) {
            return; // as on a disk that can only be read
        }
    }
}

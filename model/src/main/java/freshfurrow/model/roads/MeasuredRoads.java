package freshfurrow.model.roads;

import freshfurrow.model.season.Distances;
import freshfurrow.model.season.FromTo;
import freshfurrow.model.season.GeoPoint;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Distances measured on a map of roads, in whole metres, rounded up; of there and back the longer one. */
public final class MeasuredRoads implements Distances {
    private final Map<String, Integer> positions = new HashMap<>();
    private final List<int[]> metres;
    private final MachineSize size;
    private final KeptWays ways;

    /**
     * Distances between places.
     *
     * @param metres by position of one place, then of one before it
     */
    MeasuredRoads(List<String> ids, List<int[]> metres, MachineSize size, KeptWays ways) {
        for (int i = 0; i < ids.size(); i++) {
            positions.put(ids.get(i), i);
        }
        this.metres = List.copyOf(metres);
        this.size = size;
        this.ways = ways;
    }

    @Override
    public double metres(String from, String to) {
        int a = position(from);
        int b = position(to);
        return a == b ? 0 : metres.get(Math.max(a, b))[Math.min(a, b)];
    }

    @Override
    public Map<FromTo, List<GeoPoint>> ways(Set<FromTo> wanted) {
        Map<KeptWays.Way, FromTo> known = new LinkedHashMap<>();
        for (FromTo drive : wanted) {
            Integer from = positions.get(drive.from());
            Integer to = positions.get(drive.to());
            if (from != null && to != null && !from.equals(to)) {
                known.put(new KeptWays.Way(from, to), drive);
            }
        }
        Map<FromTo, List<GeoPoint>> points = new LinkedHashMap<>();
        ways.of(known.keySet()).forEach((way, line) -> points.put(known.get(way), line));
        return points;
    }

    KeptTable keptOf(String map) {
        return new KeptTable(map, metres);
    }

    /** What was said of the machines that have to fit. */
    public MachineSize size() {
        return size;
    }

    /** How many places they are between. */
    public int places() {
        return positions.size();
    }

    /** The longest of all, m; 0 where there is one place or none. */
    public int longestM() {
        return metres.stream().flatMapToInt(Arrays::stream).max().orElse(0);
    }

    /** All of them as text, which says whether two maps make any difference to a season. */
    public String text() {
        return KeptTable.text(metres);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof MeasuredRoads roads
                && positions.equals(roads.positions)
                && Arrays.deepEquals(metres.toArray(), roads.metres.toArray());
    }

    @Override
    public int hashCode() {
        return positions.hashCode();
    }

    private int position(String id) {
        Integer position = positions.get(id);
        if (position == null) {
            throw new IllegalArgumentException("no place " + id);
        }
        return position;
    }
}

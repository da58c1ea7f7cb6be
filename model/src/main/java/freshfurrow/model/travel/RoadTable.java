package freshfurrow.model.travel;

import freshfurrow.model.season.Distances;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Distances from every place to every other in whole metres, rounded up, measured once; the same both ways. */
public final class RoadTable implements Distances {
    private final List<String> places;
    private final Map<String, Integer> indices = new HashMap<>();
    private final int[] metres;

    private RoadTable(List<String> places, Distances measured) {
        this.places = List.copyOf(places);
        for (int i = 0; i < places.size(); i++) {
            indices.put(places.get(i), i);
        }
        metres = new int[row(places.size())];
        // on all cores: five thousand places are twelve million pairs
        IntStream.range(0, places.size()).parallel().forEach(a -> {
            for (int b = 0; b < a; b++) {
                metres[row(a) + b] = roundedUp(measured, places.get(a), places.get(b));
            }
        });
    }

    /** A table of the places, in that order; the one that is given, if it is of the same. */
    public static RoadTable of(List<String> places, Distances distances) {
        return distances instanceof RoadTable table && table.places.equals(places)
                ? table
                : new RoadTable(places, distances);
    }

    /** A geodesic is asked for only where what can be told sooner leaves open which whole number it is. */
    private static int roundedUp(Distances distances, String from, String to) {
        double least = Math.ceil(distances.atLeast(from, to));
        return (int) (least == Math.ceil(distances.atMost(from, to)) ? least : Math.ceil(distances.metres(from, to)));
    }

    /** Between the places with these indices; those of the last places are in rows that are read often, and so near at hand. */
    public int metres(int from, int to) {
        return metres[row(Math.max(from, to)) + Math.min(from, to)];
    }

    /** Where the row of a place begins, which ends with the place itself. */
    private static int row(int place) {
        return place * (place + 1) / 2;
    }

    @Override
    public double metres(String from, String to) {
        Integer a = indices.get(from);
        Integer b = indices.get(to);
        if (a == null || b == null) {
            throw new IllegalArgumentException("no road from " + from + " to " + to);
        }
        return metres(a, b);
    }
}

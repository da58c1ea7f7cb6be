package freshfurrow.model.travel;

import freshfurrow.model.season.Distances;
import java.util.Map;

/**
 * Distances as given, the same in both directions.
 *
 * @param metres by the two ids, in either order
 */
public record MatrixDistances(Map<Pair, Double> metres) implements Distances {
    public MatrixDistances {
        metres = Map.copyOf(metres);
    }

    /** Two ids in alphabetical order. */
    public record Pair(String a, String b) {
        public Pair {
            if (a.compareTo(b) > 0) {
                String first = b;
                b = a;
                a = first;
            }
        }

        /** Ids such as F1 to F999 have hashes close together, whose usual combination is the same for very many pairs. */
        @Override
        public int hashCode() {
            return 0x9E3779B9 * a.hashCode() + b.hashCode();
        }
    }

    @Override
    public double metres(String from, String to) {
        if (from.equals(to)) {
            return 0;
        }
        Double distance = metres.get(new Pair(from, to));
        if (distance == null) {
            throw new IllegalArgumentException("no distance from " + from + " to " + to);
        }
        return distance;
    }
}

package freshfurrow.roads;

import com.graphhopper.storage.Graph;
import com.graphhopper.util.EdgeExplorer;
import com.graphhopper.util.EdgeIterator;
import java.util.ArrayDeque;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;

/** The best ways from one node to others (Dijkstra, 'A note on two problems in connexion with graphs', 1959). */
final class WaysFrom {
    private static final Comparator<Reached> BEST_FIRST =
            Comparator.<Reached>comparingDouble(Reached::cost).thenComparingInt(Reached::node);

    private final Map<Integer, Reached> reached = new HashMap<>();

    /**
     * A node with the best way to it.
     *
     * @param cost as which the way counts, m
     * @param metres how long it is
     * @param edge the last stretch of road
     * @param before empty for the node where the ways begin
     */
    record Reached(int node, double cost, double metres, int edge, Optional<Reached> before) {}

    /** Looks no farther than to the last of the nodes that are wanted. */
    WaysFrom(Graph graph, FarmWeighting weighting, int from, Set<Integer> wanted) {
        Set<Integer> missing = new HashSet<>(wanted);
        PriorityQueue<Reached> next = new PriorityQueue<>(BEST_FIRST);
        next.add(new Reached(from, 0, 0, EdgeIterator.NO_EDGE, Optional.empty()));
        EdgeExplorer roads = graph.createEdgeExplorer();
        while (!next.isEmpty() && !missing.isEmpty()) {
            Reached best = next.poll();
            if (reached.putIfAbsent(best.node(), best) != null) {
                continue;
            }
            missing.remove(best.node());
            EdgeIterator edge = roads.setBaseNode(best.node());
            while (edge.next()) {
                double cost = best.cost() + weighting.there(edge);
                if (cost < Double.POSITIVE_INFINITY && !reached.containsKey(edge.getAdjNode())) {
                    next.add(new Reached(
                            edge.getAdjNode(),
                            cost,
                            best.metres() + edge.getDistance(),
                            edge.getEdge(),
                            Optional.of(best)));
                }
            }
        }
    }

    /** How long the way to a node is, m; infinite where there is none. */
    double metres(int node) {
        Reached end = reached.get(node);
        return end == null ? Double.POSITIVE_INFINITY : end.metres();
    }

    /** The way to a node from where it begins, without its first node; empty where there is none. */
    Deque<Reached> way(int node) {
        Deque<Reached> way = new ArrayDeque<>();
        Optional<Reached> at = Optional.ofNullable(reached.get(node));
        while (at.isPresent() && at.get().before().isPresent()) {
            way.push(at.get());
            at = at.get().before();
        }
        return way;
    }
}

package freshfurrow.solver.bounds;

import java.util.Arrays;

/**
 * The least cost of ways that begin at some places and come to every node once.
 *
 * <p>Proof. Take all starts for one root. Ways that come to each node once, each from a start of its own, are a tree of root and nodes in which no node has more than two edges and the
 * root no more than there are starts. So with any penalties p &gt;= 0, of which each edge bears those of both its ends, the edges' costs come to at least those of the cheapest tree
 * of all, less twice the sum of the nodes' penalties and the root's times the starts (Held and Karp, 'The traveling-salesman problem and minimum spanning trees: Part II', Mathematical Programming 1, 1971; the same
 * with degrees bounded above). That is the sum over the nodes of what the edge towards the root bears less twice the node's own penalty, its {@link #share}, less that for the root.
 *
 * <p>Where ways leave some nodes out, these nodes' edges towards the root and the ways' edges together hold all nodes and the root together too, and no node that is left out takes twice its penalty off. So the ways cost at least the sum
 * less the shares above 0 of the nodes that are left out.
 *
 * <p>A node that is free of charge hangs on the root for nothing beside the edges of ways, and bears no penalty, so that it may have as many edges as it likes.
 *
 * <p>All is worked out in whole numbers. The penalties are found by steps towards trees that keep to the bounds; whatever they are, the proof holds.
 */
final class SpanningForest {
    /** So many parts of a unit of cost are told apart in penalties. */
    static final long PARTS = 1_000;

    private static final int MOST_ROUNDS = 100;
    private static final long MOST_COSTS = 60_000_000;
    private static final double FIRST_STEP = 1.5;
    private static final int PATIENCE = 6;

    private final Costs costs;
    private final int nodes;
    private final int starts;

    private final long[] penalty;
    private long rootPenalty;
    private final long[] nearest;
    private final int[] parent;
    private final int[] edges;
    private int rootEdges;

    private long best = -1;
    private long[] share = {};

    /** What an edge costs, in whole units, the same both ways. */
    interface Costs {
        /** Too much for any way where there is none. */
        long between(int node, int other);

        /** From the best of the starts. */
        long fromStart(int node);

        /** Whether a node need not be on a way. */
        boolean isFree(int node);
    }

    SpanningForest(int nodes, int starts, Costs costs) {
        this.nodes = nodes;
        this.starts = starts;
        this.costs = costs;
        penalty = new long[nodes];
        nearest = new long[nodes];
        parent = new int[nodes];
        edges = new int[nodes];
        climb();
    }

    /** In {@link #PARTS} of a unit, 0 or more. */
    long least() {
        return Math.max(0, best);
    }

    /** What a node that is left out takes off at the most, in {@link #PARTS} of a unit, 0 or more. */
    long share(int node) {
        return best <= 0 ? 0 : Math.max(0, share[node]);
    }

    private void climb() {
        int rounds = nodes == 0 ? 0 : (int) Math.max(1, Math.min(MOST_ROUNDS, MOST_COSTS / nodes / nodes));
        double step = FIRST_STEP;
        int worse = 0;
        for (int round = 0; round < rounds; round++) {
            long bound = cheapestTree();
            if (bound > best) {
                best = bound;
                share = shares();
                worse = 0;
            } else if (++worse == PATIENCE) {
                step /= 2;
                worse = 0;
            }
            if (!adjust(step * Math.max(PARTS, Math.abs(best)))) {
                return;
            }
        }
    }

    /** Prim's way, from the root: by what each node bears towards it. */
    private long cheapestTree() {
        Arrays.fill(edges, 0);
        rootEdges = 0;
        boolean[] isIn = new boolean[nodes];
        for (int node = 0; node < nodes; node++) {
            parent[node] = nodes;
            nearest[node] = costs.isFree(node) ? 0 : PARTS * costs.fromStart(node) + penalty[node] + rootPenalty;
        }
        long bound = -starts * rootPenalty;
        for (int taken = 0; taken < nodes; taken++) {
            int next = nearestOf(isIn);
            isIn[next] = true;
            bound += nearest[next] - 2 * penalty[next];
            countEdge(next);
            for (int node = 0; node < nodes; node++) {
                if (!isIn[node]) {
                    long towards = PARTS * costs.between(next, node) + penalty[next] + penalty[node];
                    if (towards < nearest[node]) {
                        nearest[node] = towards;
                        parent[node] = next;
                    }
                }
            }
        }
        return bound;
    }

    private int nearestOf(boolean[] isIn) {
        int best = -1;
        for (int node = 0; node < nodes; node++) {
            if (!isIn[node] && (best < 0 || nearest[node] < nearest[best])) {
                best = node;
            }
        }
        return best;
    }

    private void countEdge(int node) {
        edges[node]++;
        if (parent[node] < nodes) {
            edges[parent[node]]++;
        } else if (!costs.isFree(node)) {
            rootEdges++;
        }
    }

    private long[] shares() {
        long[] shares = new long[nodes];
        for (int node = 0; node < nodes; node++) {
            shares[node] = nearest[node] - 2 * penalty[node];
        }
        return shares;
    }

    /** Lets nodes bear more that have too many edges, and less that have too few; false where none has too many. */
    private boolean adjust(double length) {
        long squares = (long) (rootEdges - starts) * (rootEdges - starts);
        boolean any = rootEdges > starts;
        for (int node = 0; node < nodes; node++) {
            if (!costs.isFree(node)) {
                any |= edges[node] > 2;
                squares += (long) (edges[node] - 2) * (edges[node] - 2);
            }
        }
        double step = squares == 0 ? 0 : length / squares / 20;
        rootPenalty = moved(rootPenalty, step, rootEdges - starts);
        for (int node = 0; node < nodes; node++) {
            if (!costs.isFree(node)) {
                penalty[node] = moved(penalty[node], step, edges[node] - 2);
            }
        }
        return any || hasPenalty();
    }

    private boolean hasPenalty() {
        return rootPenalty > 0 || Arrays.stream(penalty).anyMatch(own -> own > 0);
    }

    private static long moved(long own, double step, int tooMany) {
        return Math.max(0, own + Math.round(step * tooMany));
    }
}

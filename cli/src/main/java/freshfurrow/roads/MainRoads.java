package freshfurrow.roads;

import com.carrotsearch.hppc.IntArrayList;
import com.carrotsearch.hppc.cursors.IntCursor;
import com.graphhopper.routing.subnetwork.TarjanSCC;
import com.graphhopper.routing.util.AllEdgesIterator;
import com.graphhopper.routing.util.EdgeFilter;
import com.graphhopper.storage.BaseGraph;
import com.graphhopper.util.EdgeIteratorState;
import java.util.Arrays;
import java.util.List;

/**
 * Roads that lead somewhere: all of a network can be driven from all of it. A drive that is on no other road, or a road that can only be
 * left, is no way to a field, even where it is nearest.
 */
final class MainRoads implements EdgeFilter {
    /** A network with less road than this leads nowhere, m; ours, no source. */
    private static final double LEAST_M = 1_000;

    private static final int NONE = -1;

    private final FarmWeighting weighting;
    private final int[] networks;
    private final double[] metres;

    MainRoads(BaseGraph graph, FarmWeighting weighting) {
        this.weighting = weighting;
        List<IntArrayList> components = TarjanSCC.findComponents(
                        graph, edge -> weighting.there(edge) < Double.POSITIVE_INFINITY, true)
                .getComponents();
        networks = new int[graph.getNodes()];
        Arrays.fill(networks, NONE);
        for (int i = 0; i < components.size(); i++) {
            for (IntCursor node : components.get(i)) {
                networks[node.value] = i;
            }
        }
        metres = new double[components.size()];
        AllEdgesIterator edges = graph.getAllEdges();
        while (edges.next()) {
            if (isInOne(edges)) {
                metres[networks[edges.getBaseNode()]] += edges.getDistance();
            }
        }
    }

    @Override
    public boolean accept(EdgeIteratorState edge) {
        return isInOne(edge) && metres[networks[edge.getBaseNode()]] >= LEAST_M;
    }

    private boolean isInOne(EdgeIteratorState edge) {
        int network = networks[edge.getBaseNode()];
        return network != NONE && network == networks[edge.getAdjNode()] && weighting.isOpen(edge);
    }
}

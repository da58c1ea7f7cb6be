package freshfurrow.solver.bounds;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** The least of ways against arithmetic done by hand, and against all ways of small places. */
class SpanningForestTest {
    private static final long MUCH = 1_000_000;

    /** From one of three places around a fourth: 1 to the middle, 1 to the second, 2 to the third. Of a tree alone, 3. */
    @Test
    void noNodeHasMoreThanTwoEdges() {
        long[][] between = {{0, 10, 10, 10}, {10, 0, 20, 20}, {10, 20, 0, 20}, {10, 20, 20, 0}};
        SpanningForest forest = forest(between, new long[] {10, 0, 20, 20}, new boolean[4], 1);

        assertThat(forest.least()).isBetween(39_500L, 40_000L);
    }

    /** Two places 100 apart, each 60 from where one starts: the second is come to from the first. */
    @Test
    void noMoreSetOutThanThereAre() {
        long[][] between = {{0, 100}, {100, 0}};

        assertThat(forest(between, new long[] {60, 60}, new boolean[2], 1).least())
                .isBetween(159_000L, 160_000L);
        assertThat(forest(between, new long[] {60, 60}, new boolean[2], 2).least())
                .isEqualTo(120_000L);
    }

    @Test
    void whereThereIsNothingThereIsNoWay() {
        assertThat(forest(new long[0][0], new long[0], new boolean[0], 1).least())
                .isZero();
    }

    @Property(tries = 1000)
    void noWaysAreShorter(@ForAll long seed, @ForAll @IntRange(min = 1, max = 6) int nodes) {
        Random random = new Random(seed);
        int starts = 1 + random.nextInt(2);
        long[][] between = new long[nodes][nodes];
        for (int a = 0; a < nodes; a++) {
            for (int b = 0; b < a; b++) {
                between[a][b] = random.nextInt(8) == 0 ? MUCH : random.nextInt(100);
                between[b][a] = between[a][b];
            }
        }
        long[] fromStart = random.longs(nodes, 0, 100).toArray();
        boolean[] free = new boolean[nodes];
        for (int node = 0; node < nodes; node++) {
            free[node] = random.nextInt(6) == 0;
        }
        SpanningForest forest = forest(between, fromStart, free, starts);

        for (int leftOut = 0; leftOut < 1 << nodes; leftOut++) {
            long least = shortest(between, fromStart, free, starts, leftOut, -1) * SpanningForest.PARTS;
            long shares = 0;
            for (int node = 0; node < nodes; node++) {
                shares += (leftOut >> node & 1) == 1 ? forest.share(node) : 0;
            }
            assertThat(forest.least() - shares).isLessThanOrEqualTo(least);
        }
    }

    /** Tries all ways that come to every node that is left, where a free one may be passed by. */
    private static long shortest(long[][] between, long[] fromStart, boolean[] free, int starts, int visited, int at) {
        long least = Long.MAX_VALUE / 4;
        boolean all = true;
        for (int node = 0; node < free.length; node++) {
            if ((visited >> node & 1) == 0) {
                all &= free[node];
                int then = visited | 1 << node;
                if (at >= 0) {
                    least = Math.min(least, between[at][node] + shortest(between, fromStart, free, starts, then, node));
                }
                if (starts > 0) {
                    least = Math.min(
                            least, fromStart[node] + shortest(between, fromStart, free, starts - 1, then, node));
                }
            }
        }
        return all ? 0 : least;
    }

    private static SpanningForest forest(long[][] between, long[] fromStart, boolean[] free, int starts) {
        assertThat(Arrays.stream(between).allMatch(row -> row.length == free.length))
                .isTrue();
        return new SpanningForest(free.length, starts, new SpanningForest.Costs() {
            @Override
            public long between(int node, int other) {
                return between[node][other];
            }

            @Override
            public long fromStart(int node) {
                return fromStart[node];
            }

            @Override
            public boolean isFree(int node) {
                return free[node];
            }
        });
    }
}

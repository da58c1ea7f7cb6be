package freshfurrow.solver.construction;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CurveTest {
    /** Each square of Hilbert's curve shares a side with the next (Hilbert 1891); only one order of a kind does so. */
    @ParameterizedTest
    @ValueSource(ints = {2, 4, 8, 16})
    void eachSquareOfHilbertsCurveLiesBesideTheNext(int side) {
        List<Integer> order = order(new HilbertCurve(), side);

        for (int i = 0; i + 1 < order.size(); i++) {
            assertThat(apart(order.get(i), order.get(i + 1), side))
                    .as("step %d", i)
                    .isEqualTo(1);
        }
    }

    @Test
    void hilbertsCurveIsDoneWithAQuarterBeforeItLeavesIt() {
        List<Integer> order = order(new HilbertCurve(), 8);

        for (int quarter = 0; quarter < 4; quarter++) {
            assertThat(order.subList(16 * quarter, 16 * quarter + 16).stream()
                            .map(square -> List.of(square % 8 / 4, square / 8 / 4))
                            .distinct())
                    .hasSize(1);
        }
    }

    /** 16 squares in strips of two squares: two strips of two columns, up the first and down the second. */
    @Test
    void stripsGoUpAndDownByTurns() {
        List<Integer> order = order(new Strips(0, 2), 4);

        assertThat(order.stream().map(square -> square / 4))
                .containsExactly(0, 0, 1, 1, 2, 2, 3, 3, 3, 3, 2, 2, 1, 1, 0, 0);
        assertThat(order.subList(0, 8)).allMatch(square -> square % 4 < 2);
    }

    @Test
    void stripsAcrossGoAlongTheFirstAxis() {
        List<Integer> order = order(new Strips(90, 4), 4);

        assertThat(order.stream().map(square -> square % 4)).isSortedAccordingTo(Comparator.reverseOrder());
    }

    private static int apart(int one, int other, int side) {
        return Math.abs(one % side - other % side) + Math.abs(one / side - other / side);
    }

    /** The order of squares side by side, from left to right and then upwards. */
    private static List<Integer> order(Curve curve, int side) {
        FieldMap squares = new FieldMap(
                IntStream.range(0, side * side).mapToDouble(i -> i % side).toArray(),
                IntStream.range(0, side * side)
                        .mapToDouble(i -> Math.floorDiv(i, side))
                        .toArray());
        double[] along = curve.along(squares);
        return IntStream.range(0, side * side)
                .boxed()
                .sorted(Comparator.comparingDouble(square -> along[square]))
                .toList();
    }
}

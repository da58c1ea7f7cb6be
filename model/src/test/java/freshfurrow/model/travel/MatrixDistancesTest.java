package freshfurrow.model.travel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import freshfurrow.model.travel.MatrixDistances.Pair;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

final class MatrixDistancesTest {
    private final MatrixDistances distances = new MatrixDistances(Map.of(new Pair("yard", "N40"), 1200.0));

    @Test
    void aDistanceHoldsInBothDirections() {
        assertThat(distances.metres("yard", "N40")).isEqualTo(1200);
        assertThat(distances.metres("N40", "yard")).isEqualTo(1200);
    }

    @Test
    void aPlaceIsNoWayFromItself() {
        assertThat(distances.metres("yard", "yard")).isZero();
    }

    @Test
    void aPairWithoutADistanceIsRefused() {
        assertThatThrownBy(() -> distances.metres("yard", "S80"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no distance from yard to S80");
    }

    /** Tables of many numbered fields would take minutes to read if their pairs shared hashes. */
    @Test
    void pairsOfNumberedFieldsHardlyShareAHash() {
        Set<Integer> hashes = new HashSet<>();
        int pairs = 0;
        for (int i = 0; i < 400; i++) {
            for (int j = 0; j < i; j++) {
                hashes.add(new Pair("F" + i, "F" + j).hashCode());
                pairs++;
            }
        }
        assertThat(hashes).hasSizeGreaterThan(pairs * 9 / 10);
    }
}

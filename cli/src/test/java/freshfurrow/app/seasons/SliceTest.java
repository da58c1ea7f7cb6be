package freshfurrow.app.seasons;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

final class SliceTest {
    private static final int MOST = 25;

    @Test
    void slicesHaveEachSeasonOnceHoweverManyThereAre() {
        for (int seasons = 0; seasons <= MOST; seasons++) {
            List<Integer> all = IntStream.range(0, seasons).boxed().toList();
            for (int slices = 1; slices <= MOST + 1; slices++) {
                assertThat(ofAllSlices(all, slices)).containsExactlyInAnyOrderElementsOf(all);
            }
        }
    }

    @Test
    void noSliceHasTwoSeasonsMoreThanAnother() {
        List<Integer> all = IntStream.range(0, MOST).boxed().toList();
        for (int slices = 1; slices <= MOST; slices++) {
            for (int number = 1; number <= slices; number++) {
                assertThat(new Slice(number, slices).of(all).size()).isBetween(MOST / slices, MOST / slices + 1);
            }
        }
    }

    @Test
    void theFirstSliceIsNumberOne() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Slice(0, 3));
        assertThatIllegalArgumentException().isThrownBy(() -> new Slice(4, 3));
    }

    private static List<Integer> ofAllSlices(List<Integer> all, int slices) {
        return IntStream.rangeClosed(1, slices)
                .boxed()
                .flatMap(number -> new Slice(number, slices).of(all).stream())
                .toList();
    }
}

package freshfurrow.model.read;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.read.WaysBetweenFields.Drive;
import freshfurrow.model.season.Distances;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

final class WaysBetweenFieldsTest {
    /** Places are called by where they lie on one road, km from its beginning. */
    private static final Distances ALONG_ONE_ROAD =
            (from, to) -> 1000 * Math.abs(Double.parseDouble(from) - Double.parseDouble(to));

    /** 600 s to get ready and at most 1,600 s: 1,000 s at 10 m/s are 10 km. */
    private static final Drive TEN_KILOMETRES = new Drive(600, 10, 1_600);

    @Test
    void fieldsAreReachedFromOneAnotherAndOthersAreNot() {
        WaysBetweenFields ways =
                new WaysBetweenFields(List.of("5", "15", "25", "35.001", "45"), TEN_KILOMETRES, ALONG_ONE_ROAD);
        assertThat(ways.from("0")).containsExactlyInAnyOrder("5", "15", "25");
        assertThat(ways.from("55")).containsExactlyInAnyOrder("35.001", "45");
        assertThat(ways.from("30")).containsExactlyInAnyOrder("5", "15", "25", "35.001", "45");
        assertThat(ways.from("60")).isEmpty();
    }

    /** Each field is compared with those that are left, half a million pairs of a thousand; then each planter with the fields once. */
    @Test
    void fieldsThatCannotBeReachedAreLookedAtOnceForAllMachines() {
        List<String> apart =
                IntStream.range(0, 1_000).mapToObj(i -> String.valueOf(20 * i)).toList();
        AtomicInteger asked = new AtomicInteger();
        WaysBetweenFields ways = new WaysBetweenFields(apart, TEN_KILOMETRES, (from, to) -> {
            asked.incrementAndGet();
            return ALONG_ONE_ROAD.metres(from, to);
        });
        for (int planter = 0; planter < 50; planter++) {
            assertThat(ways.from("5")).containsExactly("0");
        }
        assertThat(asked.get()).isLessThan(3 * (1_000 * 999 / 2 + 1_000));
    }
}

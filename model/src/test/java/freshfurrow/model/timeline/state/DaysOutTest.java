package freshfurrow.model.timeline.state;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class DaysOutTest {
    private static final int DAY = 86_400;

    private final long[] v = new long[DaysOut.SIZE];

    @Test
    void aDayOutWithWorkIsNotForNothingWhicheverCameFirst() {
        DaysOut.left(v, 0, 0);
        DaysOut.worked(v, 0, 3_600);
        assertThat(DaysOut.left(v, 0, 7_200)).isZero();

        DaysOut.worked(v, 0, DAY);
        assertThat(DaysOut.left(v, 0, DAY + 1)).isZero();
        assertThat(DaysOut.forNothing(v, 0)).isZero();
    }

    @Test
    void aDayOutWithoutWorkIsTold() {
        DaysOut.left(v, 0, 0);
        DaysOut.left(v, 0, 60);
        DaysOut.worked(v, 0, DAY);

        assertThat(DaysOut.left(v, 0, 2 * DAY)).isOne();
        assertThat(DaysOut.forNothing(v, 0)).isOne();
    }
}

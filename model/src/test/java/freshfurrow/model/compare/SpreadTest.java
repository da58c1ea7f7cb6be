package freshfurrow.model.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SpreadTest {
    /** Hyndman and Fan (1996), definition 8: the p-quantile of n figures stands at place p (n + 1/3) + 1/3. */
    @Test
    void quantilesOfOneToTenStandWhereTheDefinitionPutsThem() {
        Spread spread = Spread.of(new double[] {10, 1, 9, 2, 8, 3, 7, 4, 6, 5});

        // 0.1 x 10.3333 + 0.3333 = 1.3667; 0.9 x 10.3333 + 0.3333 = 9.6333
        assertThat(spread.low()).isCloseTo(1.3667, within(0.0001));
        assertThat(spread.median()).isEqualTo(5.5);
        assertThat(spread.high()).isCloseTo(9.6333, within(0.0001));
        assertThat(spread.mean()).isEqualTo(5.5);
    }

    @Test
    void oneSpringIsItsOwnMedian() {
        assertThat(Spread.of(new double[] {42})).isEqualTo(new Spread(42, 42, 42, 42));
    }
}

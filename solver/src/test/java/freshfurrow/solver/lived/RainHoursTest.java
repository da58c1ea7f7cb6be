package freshfurrow.solver.lived;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.GroundRecord;
import freshfurrow.model.season.WetDay;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class RainHoursTest {
    private static final GroundRecord RECORD =
            TwoFields.wet(Map.of(Drainage.POOR, Map.of(1, 0, 2, 0, 4, 0), Drainage.WELL, Map.of(1, 0)));

    @Test
    void onlyTheFirstDayOfAWetTimeBeginsLaterThanMidnight() {
        boolean later = false;
        for (int spring = 1; spring <= 50; spring++) {
            List<WetDay> poor =
                    new RainHours(1).in(RECORD, spring, TwoFields.FIRST).wetDays(Drainage.POOR);
            later |= poor.get(0).fromS() > 0;
            assertThat(poor.get(1).fromS()).isZero();
        }
        assertThat(later).isTrue();
    }

    @Test
    void rainBeginsAtTheSameHourOnAllGround() {
        GroundRecord ground = new RainHours(1).in(RECORD, 3, TwoFields.FIRST);

        assertThat(ground.wetDays(Drainage.WELL).get(0).fromS())
                .isEqualTo(ground.wetDays(Drainage.POOR).get(0).fromS());
    }

    @Test
    void aSeasonThatBeginsWetIsWetFromItsFirstMidnight() {
        GroundRecord wet = TwoFields.wet(Map.of(Drainage.POOR, Map.of(0, 0)));

        for (int spring = 1; spring <= 20; spring++) {
            assertThat(new RainHours(1)
                            .in(wet, spring, TwoFields.FIRST)
                            .wetDays(Drainage.POOR)
                            .get(0)
                            .fromS())
                    .isZero();
        }
    }

    /** The mean of 0 to 23 is 11.5 h; over 4,000 springs its standard error is sqrt((24 x 24 - 1) / 12 / 4,000) = 0.11 h. */
    @Test
    void theHourIsDrawnEvenlyFromTheDay() {
        double sum = 0;
        for (int spring = 1; spring <= 4_000; spring++) {
            sum += new RainHours(5)
                            .in(RECORD, spring, TwoFields.FIRST)
                            .wetDays(Drainage.POOR)
                            .get(0)
                            .fromS()
                    / 3600.0;
        }
        assertThat(sum / 4_000).isCloseTo(11.5, within(0.45));
    }
}

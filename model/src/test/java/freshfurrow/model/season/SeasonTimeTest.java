package freshfurrow.model.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalDateTime;
import org.junit.jupiter.api.Test;

class SeasonTimeTest {
    private final SeasonTime time = new SeasonTime(LocalDate.of(2027, 4, 20));

    @Test
    void secondsAreCountedFromTheFirstMidnight() {
        // one day and 7 h 30 min: 86,400 + 27,000
        assertThat(time.seconds(LocalDateTime.of(2027, 4, 21, 7, 30))).isEqualTo(113_400);
        assertThat(time.at(113_400)).isEqualTo(LocalDateTime.of(2027, 4, 21, 7, 30));
    }

    @Test
    void whatComesBeforeTheSeasonIsBelowZero() {
        assertThat(time.seconds(LocalDateTime.of(2027, 4, 19, 23, 0))).isEqualTo(-3_600);
        assertThat(time.day(LocalDate.of(2027, 4, 18))).isEqualTo(-2);
    }

    @Test
    void aDateBeginsAtItsMidnight() {
        assertThat(time.midnight(LocalDate.of(2027, 4, 22))).isEqualTo(172_800);
        assertThat(time.day(LocalDate.of(2027, 4, 22))).isEqualTo(2);
    }
}

package freshfurrow.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.quantity.ClockFace;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

final class DateTextTest {
    private static final LocalDate DATE = LocalDate.of(2027, 4, 9);

    @Test
    void theMonthIsFirstWhereClocksHaveTwelveHours() {
        DateText dates = new DateText(ClockFace.TWELVE_HOURS);
        assertThat(dates.full(DATE)).isEqualTo("Friday, April 9, 2027");
        assertThat(dates.brief(DATE)).isEqualTo("Fri Apr 9");
    }

    @Test
    void theDayIsFirstElsewhere() {
        DateText dates = new DateText(ClockFace.TWENTY_FOUR_HOURS);
        assertThat(dates.full(DATE)).isEqualTo("Friday 9 April 2027");
        assertThat(dates.brief(DATE)).isEqualTo("Fri 9 Apr");
    }
}

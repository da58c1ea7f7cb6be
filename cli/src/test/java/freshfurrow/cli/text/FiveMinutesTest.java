package freshfurrow.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDateTime;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

final class FiveMinutesTest {
    private static final LocalDateTime MIDNIGHT = LocalDateTime.parse("2027-04-20T00:00");

    @Test
    void aTimeIsAboutTheNearestFiveMinutes() {
        // 7:22:29 is 2 min 29 s after 7:20, 7:22:30 is as far from 7:25
        assertThat(about("07:22:29")).isEqualTo(time("07:20"));
        assertThat(about("07:22:30")).isEqualTo(time("07:25"));
        assertThat(about("07:25")).isEqualTo(time("07:25"));
        assertThat(about("23:58")).isEqualTo(MIDNIGHT.plusDays(1));
    }

    @Test
    void aLimitIsTheFiveMinutesBeforeIt() {
        assertThat(last("12:04:59")).isEqualTo(time("12:00"));
        assertThat(last("12:05")).isEqualTo(time("12:05"));
        assertThat(last("00:03")).isEqualTo(MIDNIGHT);
    }

    @Property
    void aLimitIsNeverLaterThanItIsAndLessThanFiveMinutesBefore(@ForAll @IntRange(max = 2 * 86_400) int seconds) {
        LocalDateTime limit = MIDNIGHT.plusSeconds(seconds);
        LocalDateTime shown = FiveMinutes.last(limit);
        assertThat(shown).isBeforeOrEqualTo(limit);
        assertThat(Duration.between(shown, limit)).isLessThan(Duration.ofMinutes(5));
        assertThat(shown.getMinute() % 5 + shown.getSecond()).isZero();
    }

    @Property
    void whatComesLaterNeverReadsEarlier(
            @ForAll @IntRange(max = 86_400) int seconds, @ForAll @IntRange(max = 900) int more) {
        LocalDateTime time = MIDNIGHT.plusSeconds(seconds);
        assertThat(FiveMinutes.about(time.plusSeconds(more))).isAfterOrEqualTo(FiveMinutes.about(time));
        assertThat(Duration.between(time, FiveMinutes.about(time)).abs()).isLessThanOrEqualTo(Duration.ofSeconds(150));
    }

    private static LocalDateTime about(String time) {
        return FiveMinutes.about(time(time));
    }

    private static LocalDateTime last(String time) {
        return FiveMinutes.last(time(time));
    }

    private static LocalDateTime time(String time) {
        return LocalDateTime.parse("2027-04-20T" + time);
    }
}

package freshfurrow.app.input;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.example.ExampleSeason;
import freshfurrow.model.season.Season;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;

class SeasonClockTest {
    private static final Season SEASON = ExampleSeason.season();

    @Test
    void theTimeIsThatOfTheSeasonsZoneInWholeMinutes() {
        // The example season is in UTC; the clock stands in a zone 5 h behind.
        assertThat(clock("2027-04-20T15:10:59Z").inSeason(SEASON)).contains(LocalDateTime.of(2027, 4, 20, 15, 10));
    }

    @Test
    void outsideOfTheSeasonThereIsNoNow() {
        // It goes from 19 to 25 April.
        assertThat(clock("2027-04-18T23:59:00Z").inSeason(SEASON)).isEmpty();
        assertThat(clock("2027-04-19T00:00:00Z").inSeason(SEASON)).isPresent();
        assertThat(clock("2027-04-25T23:59:00Z").inSeason(SEASON)).isPresent();
        assertThat(clock("2027-04-26T00:00:00Z").inSeason(SEASON)).isEmpty();
    }

    private static SeasonClock clock(String instant) {
        return new SeasonClock(Clock.fixed(Instant.parse(instant), ZoneId.of("America/Chicago")));
    }
}

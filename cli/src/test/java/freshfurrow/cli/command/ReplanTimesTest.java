package freshfurrow.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import freshfurrow.app.input.SeasonClock;
import freshfurrow.app.planning.PlanningMoment;
import freshfurrow.cli.example.ExampleSeason;
import freshfurrow.model.log.Entry;
import freshfurrow.model.log.Fact;
import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.progress.News;
import freshfurrow.model.season.Season;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** From when on a replan plans, and until when a machine may be down. */
final class ReplanTimesTest {
    /** It goes from 19 to 25 April 2027. */
    private static final Season SEASON = ExampleSeason.season();

    private static final News NO_NEWS = new News(List.of(), List.of(), Set.of());

    @Test
    void anEntryAtTheMidnightThatEndsTheSeasonCountsAtItsLastSecond() {
        assertThat(latest(LocalDateTime.of(2027, 4, 26, 0, 0))).isEqualTo(LocalDateTime.of(2027, 4, 25, 23, 59, 59));
        assertThat(latest(LocalDateTime.of(2027, 4, 25, 23, 59, 30)))
                .isEqualTo(LocalDateTime.of(2027, 4, 25, 23, 59, 30));
    }

    @Test
    void aTimeThatIsSaidIsOfADayOfTheSeason() {
        assertThatExceptionOfType(Refusal.class)
                .isThrownBy(() -> moment(Optional.of(LocalDateTime.of(2027, 4, 26, 0, 0)), SeasonLog.EMPTY))
                .withMessageContaining("is not in the season");
    }

    @ParameterizedTest
    @CsvSource({
        "R1=2027-04-20T00:00/2101-01-01T00:00, 2101-01-01T00:00",
        "R1=1999-12-31T23:59/2027-04-20T00:00, 1999-12-31T23:59",
        "R1=2027-04-20T00:00/9999-12-31T00:00, 9999-12-31T00:00"
    })
    void aMachineIsDownInYearsThatAPlanFileCanTell(String down, String wrong) {
        assertThatExceptionOfType(Refusal.class)
                .isThrownBy(() -> NewsText.down(down))
                .withMessage("--down '" + wrong + "' is out of range; use years from 2000 to 2100");
    }

    @Test
    void aMachineMayBeDownUntilTheLastYearOfAPlanFile() {
        assertThat(NewsText.down("R1=2000-01-01T00:00/2100-12-31T23:59").until())
                .isEqualTo(LocalDateTime.of(2100, 12, 31, 23, 59));
    }

    private static LocalDateTime latest(LocalDateTime at) {
        return moment(Optional.empty(), new SeasonLog(List.of(new Entry(1, at, new Fact.Noted(), "done"))));
    }

    private static LocalDateTime moment(Optional<LocalDateTime> said, SeasonLog log) {
        Clock afterSeason = Clock.fixed(Instant.parse("2028-01-01T00:00:00Z"), ZoneOffset.UTC);
        return PlanningMoment.of(said, SEASON, log, NO_NEWS, new SeasonClock(afterSeason))
                .now();
    }
}

package freshfurrow.app.planning;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.app.input.SeasonClock;
import freshfurrow.app.refusal.PlanningRefusal;
import freshfurrow.app.refusal.Refusals;
import freshfurrow.cli.example.ExampleSeason;
import freshfurrow.model.log.Entry;
import freshfurrow.model.log.Fact;
import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.progress.News;
import freshfurrow.model.season.Season;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

final class PlanningMomentTest {
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
        LocalDateTime after = LocalDateTime.of(2027, 4, 26, 0, 0);
        assertThat(Refusals.of(() -> moment(Optional.of(after), SeasonLog.EMPTY)))
                .isEqualTo(
                        new PlanningRefusal.OutOfSeason(after, LocalDate.of(2027, 4, 19), LocalDate.of(2027, 4, 25)));
    }

    @Test
    void withoutAClockInTheSeasonAndWithoutNewsSomeoneHasToSay() {
        assertThat(Refusals.of(() -> moment(Optional.empty(), SeasonLog.EMPTY)))
                .isEqualTo(new PlanningRefusal.NoTime(LocalDate.of(2027, 4, 19), LocalDate.of(2027, 4, 25)));
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

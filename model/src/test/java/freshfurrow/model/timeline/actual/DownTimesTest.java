package freshfurrow.model.timeline.actual;

import static freshfurrow.model.timeline.calendar.Calendar.NEVER;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.TimeSpread.Breakdowns;
import freshfurrow.model.timeline.calendar.Calendar;
import freshfurrow.model.timeline.tables.SeasonTables;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class DownTimesTest {
    private static final Season SEASON = RandomSeasons.season(5);
    private static final Calendar HOURS = SeasonTables.of(SEASON).planters().hours(0);
    private static final int DAYS = SEASON.days();
    private static final int SEASONS = 4_000;

    /** A Poisson process of rate 1 / between has on average T / between events in a time T, and as much variance. */
    @Test
    void breakdownsAreAPoissonProcessOfTheWorkingTime() {
        double between = 10 * 3_600;
        double expected = HOURS.work(0, DAYS * 86_400) / between;
        double sum = 0;
        double squares = 0;
        for (int season = 0; season < SEASONS; season++) {
            int count = count(times(between, 1, season));
            sum += count;
            squares += count * count;
        }
        double mean = sum / SEASONS;
        assertThat(mean).isCloseTo(expected, within(4 * Math.sqrt(expected / SEASONS)));
        assertThat(squares / SEASONS - mean * mean).isCloseTo(expected, within(0.1 * expected));
    }

    @Test
    void downTimeHasItsMean() {
        double sum = 0;
        int count = 0;
        for (int season = 0; season < SEASONS; season++) {
            DownTimes times = times(100 * 3_600, 1_800, season);
            int down = times.nextDown(0);
            if (down < NEVER) {
                sum += times.upFrom(down) - down;
                count++;
            }
        }
        assertThat(sum / count).isCloseTo(1_800, within(4 * 1_800 / Math.sqrt(count) + 1));
    }

    @Test
    void breakdownsComeInWorkingHoursOnly() {
        for (int season = 0; season < 200; season++) {
            DownTimes times = times(3 * 3_600, 60, season);
            for (int s = times.nextDown(0); s < NEVER; s = times.nextDown(times.upFrom(s))) {
                assertThat(HOURS.holds(s)).isTrue();
            }
        }
    }

    @Test
    void workGoesOnWhereItWasOnceTheMachineIsUpAgain() {
        DownTimes times = times(20 * 3_600, 1_800, 3);
        int down = times.nextDown(0);
        int up = times.upFrom(down);

        assertThat(times.end(down - 100, 100)).isEqualTo(down);
        assertThat(times.end(down - 100, 101)).isEqualTo(up + 1);
        assertThat(times.end(down + 1, 10)).isEqualTo(up + 10);
        assertThat(times.upFrom(down - 1)).isEqualTo(down - 1);
    }

    @Test
    void aMachineThatNeverBreaksDownWorksOn() {
        DownTimes times = DownTimes.of(Optional.empty(), HOURS, 1, DAYS);

        assertThat(times.nextDown(0)).isEqualTo(NEVER);
        assertThat(times.end(5, 10)).isEqualTo(15);
    }

    private static int count(DownTimes times) {
        int count = 0;
        for (int s = times.nextDown(0); s < NEVER; s = times.nextDown(times.upFrom(s))) {
            count++;
        }
        return count;
    }

    private static DownTimes times(double betweenS, double downS, long season) {
        return DownTimes.of(Optional.of(new Breakdowns(betweenS, downS)), HOURS, KeyedRandom.key(season, 2), DAYS);
    }
}

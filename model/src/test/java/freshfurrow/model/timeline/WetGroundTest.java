package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.FieldGround;
import freshfurrow.model.season.Season;
import java.time.LocalDateTime;
import org.junit.jupiter.api.Test;

/** A moderately drained field stays closed a tenth of a day per mm, a poorly drained one a day, a well drained one none. */
class WetGroundTest {
    private static final LocalDateTime DAY_1 = WorkedSeason.day(1).atStartOfDay();

    @Test
    void groundIsWetFromTheRainUntilTheMidnightAfterWhichItBears() {
        Season season = new WorkedSeason().days(5).rain(1, "08:20", 10).season();
        assertThat(WetGround.of(season, FieldGround.of(Drainage.MODERATE)))
                .containsExactly(new WetGround(DAY_1.plusHours(8).plusMinutes(20), DAY_1.plusDays(1)));
        assertThat(WetGround.of(season, FieldGround.of(Drainage.WELL))).isEmpty();
    }

    @Test
    void rainsThatOverlapAreOneTimeAndTheSeasonsEndEndsIt() {
        Season season = new WorkedSeason()
                .days(5)
                .rain(1, "12:00", 2)
                .rain(2, "00:00", 30)
                .season();
        assertThat(WetGround.of(season, FieldGround.of(Drainage.POOR)))
                .containsExactly(new WetGround(
                        DAY_1.plusHours(12), season.last().plusDays(1).atStartOfDay()));
    }
}

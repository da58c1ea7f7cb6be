package freshfurrow.cli.text;

import static freshfurrow.cli.example.ExampleSeason.TUESDAY;
import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.example.ExamplePlan;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.quantity.ClockFace;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;

final class CrewClockTest {
    private static final CrewClock TWELVE = new CrewClock(ClockFace.TWELVE_HOURS, TUESDAY);
    private static final CrewClock TWENTY_FOUR = new CrewClock(ClockFace.TWENTY_FOUR_HOURS, TUESDAY);

    @Test
    void timesAreByTheClockOfTheSeason() {
        assertThat(TWELVE.about(TUESDAY.atTime(7, 22))).isEqualTo("7:20 am");
        assertThat(TWELVE.about(TUESDAY.atTime(19, 5))).isEqualTo("7:05 pm");
        assertThat(TWELVE.about(TUESDAY.atTime(12, 4))).isEqualTo("12:05 pm");
        assertThat(TWELVE.about(TUESDAY.atTime(0, 10))).isEqualTo("12:10 am");
        assertThat(TWENTY_FOUR.about(TUESDAY.atTime(7, 22))).isEqualTo("07:20");
    }

    @Test
    void twelveOClockHasAName() {
        assertThat(TWELVE.about(TUESDAY.atTime(12, 1))).isEqualTo("noon");
        assertThat(TWELVE.about(TUESDAY.atTime(23, 59))).isEqualTo("midnight");
        assertThat(TWENTY_FOUR.about(TUESDAY.atTime(23, 59))).isEqualTo("24:00");
    }

    @Test
    void aTimeOfAnotherDateSaysWhich() {
        assertThat(TWELVE.by(TUESDAY.plusDays(1).atTime(0, 37))).isEqualTo("12:35 am on Wed Apr 21");
        assertThat(TWELVE.shortBy(TUESDAY.plusDays(1).atTime(0, 37))).isEqualTo("Wed 12:35 am");
        assertThat(TWENTY_FOUR.shortBy(TUESDAY.atTime(9, 4))).isEqualTo("09:00");
    }

    @Test
    void aLastDropNeverReadsLaterThanItsUseByTime() {
        // 10:23 is about 10:25, but use by 10:24 reads 10:20
        assertThat(TWELVE.lastDrop(load(TUESDAY.atTime(10, 24), TUESDAY.atTime(10, 23))))
                .isEqualTo("10:20 am");
        assertThat(TWELVE.lastDrop(load(TUESDAY.atTime(10, 26), TUESDAY.atTime(10, 23))))
                .isEqualTo("10:25 am");
    }

    private static Plan.Load load(LocalDateTime useBy, LocalDateTime lastDrop) {
        Plan.Load load = ExamplePlan.plan().loads().get(0);
        return new Plan.Load(
                load.id(), load.planter(), load.rig(), load.recipe(), 1_600, List.of(), 1_600, 0, useBy, lastDrop);
    }
}

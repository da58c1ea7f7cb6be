package freshfurrow.model.timeline;

import static freshfurrow.model.quantity.Factors.HOUR_S;
import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.season.Drainage;
import org.junit.jupiter.api.Test;

/** A planter that stands for a closed field although it could plant another one of its list. Its days are from 07:00 to 19:00. */
class IdleTimeTest {
    private static final int DAY = 12 * HOUR_S;
    /** The day before a field is to be filled at 07:00, less the drive to it, as no other day is left for that. */
    private static final int DAY_OF_DRIVE = DAY - 1200;

    @Test
    void daysBeforeAWindowCountWhereAFieldThatComesLaterIsOpen() {
        WorkedSeason season =
                new WorkedSeason().days(5).field("late", 4, f -> f.window(3, 5)).field("open", 4);

        assertThat(idleS(season, 0, 1)).isEqualTo(DAY + DAY_OF_DRIVE);
        assertThat(season.plan("late open").plan().totals().idleMin()).isEqualTo(2 * 12 * 60 - 20);
    }

    @Test
    void nothingIsIdleInTheOrderOfTheWindows() {
        assertThat(idleS(
                        new WorkedSeason()
                                .days(5)
                                .field("late", 4, f -> f.window(3, 5))
                                .field("open", 4),
                        1,
                        0))
                .isZero();
    }

    @Test
    void standingForAWindowCountsNothingWhereNoOtherFieldIsOpen() {
        WorkedSeason season = new WorkedSeason()
                .days(5)
                .field("third", 4, f -> f.window(3, 5))
                .field("fourth", 4, f -> f.window(4, 5));

        assertThat(idleS(season, 0, 1)).isZero();
    }

    @Test
    void itCountsFromWhenTheOtherFieldIsOpen() {
        WorkedSeason season = new WorkedSeason()
                .days(5)
                .field("third", 4, f -> f.window(3, 5))
                .field("second", 4, f -> f.window(2, 5));

        assertThat(idleS(season, 0, 1)).isEqualTo(DAY_OF_DRIVE);
    }

    @Test
    void timeCountsOnceHoweverManyFieldsAreOpen() {
        WorkedSeason season = new WorkedSeason()
                .days(5)
                .field("third", 4, f -> f.window(3, 5))
                .field("second", 4, f -> f.window(2, 5))
                .field("first", 4)
                .field("too", 4);

        assertThat(idleS(season, 0, 1, 2, 3)).isEqualTo(DAY + DAY_OF_DRIVE);
    }

    @Test
    void aWetFieldCountsWhereADryOneComesLater() {
        WorkedSeason season = new WorkedSeason()
                .days(4)
                .wetGround(1)
                .wetGround(2)
                .field("wet", 4, f -> f.drainage(Drainage.POOR))
                .field("dry", 4);

        assertThat(idleS(season, 0, 1)).isEqualTo(2 * DAY);
        assertThat(idleS(season, 1, 0)).isZero();
    }

    @Test
    void nobodyIsIdleWhereAllIsWet() {
        WorkedSeason season = new WorkedSeason()
                .days(4)
                .wetGround(1)
                .field("A", 4, f -> f.drainage(Drainage.POOR))
                .field("B", 4, f -> f.drainage(Drainage.POOR));

        assertThat(idleS(season, 0, 1)).isZero();
    }

    @Test
    void aFieldThatIsNeverPlantedCountsNot() {
        // the second day is the last, and the field takes all of it
        WorkedSeason season = new WorkedSeason()
                .days(2)
                .field("second", 40, f -> f.window(2, 2))
                .field("open", 4);

        assertThat(idleS(season, 0, 1)).isZero();
    }

    private static long idleS(WorkedSeason season, int... list) {
        Timeline timeline = new Timeline(CompiledSeason.of(season.season()));
        timeline.run(new int[][] {list}, new int[] {list.length});
        return timeline.idleS();
    }
}

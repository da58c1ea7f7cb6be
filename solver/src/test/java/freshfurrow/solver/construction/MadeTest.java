package freshfurrow.solver.construction;

import static org.assertj.core.api.Assertions.assertThat;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.example.InventedSeason;
import freshfurrow.solver.schedule.FieldLists;
import java.util.List;
import org.junit.jupiter.api.Test;

class MadeTest {
    private static final Fleet FLEET = Fleet.whole(CompiledSeason.of(InventedSeason.of(2, 1, 1, 5_000, 1)));

    private static final Made BEST = made(0, -100, -5_000);
    private static final Made ABOUT_AS_GOOD = made(0, -110, -3_000);
    private static final Made MUCH_WORSE = made(0, -121, -1_000);
    private static final Made BREAKS_A_RULE = made(-1, 0, -500);

    private static final List<Made> ALL = List.of(MUCH_WORSE, ABOUT_AS_GOOD, BREAKS_A_RULE, BEST);

    @Test
    void theBestIsTheOneWithTheBestScore() {
        assertThat(Made.best(ALL)).contains(BEST);
    }

    @Test
    void theEasiestHasTheLeastEffortOfThoseThatAreAboutAsGoodAsTheBest() {
        assertThat(Made.easiest(ALL, 20)).contains(ABOUT_AS_GOOD);
    }

    @Test
    void whereNothingElseIsAsGoodTheBestIsTheEasiest() {
        assertThat(Made.easiest(ALL, 9)).contains(BEST);
    }

    private static Made made(long hard, long medium, long soft) {
        return new Made(
                new FieldLists(List.of(List.of(0, 1))),
                HardMediumSoftLongScore.of(hard, medium, soft),
                medium < 0,
                FLEET);
    }
}

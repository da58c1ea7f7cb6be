package freshfurrow.solver.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.model.season.Goals;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.construction.FirstLists;
import freshfurrow.solver.estimate.NearFields;
import freshfurrow.solver.estimate.SeasonEstimate;
import freshfurrow.solver.estimate.Stops;
import freshfurrow.solver.example.InventedSeason;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class ScreenedListsTest {
    private static final long MEDIUM_WORSE = 4_000_000;
    private static final HardMediumSoftLongScore MARGIN = HardMediumSoftLongScore.of(0, 100, 10);

    private final CompiledSeason season = CompiledSeason.of(InventedSeason.hurried(16, 2, 1));
    private final FieldLists start = FirstLists.byHand(season);
    private final HardMediumSoftLongScore played = new ListPlayer(season).score(start);

    @Test
    void beforeAnyStepEverythingIsPlayedOut() {
        assertThat(screened().score(schedule(backwards()))).isEqualTo(new ListPlayer(season).score(backwards()));
    }

    @Test
    void listsThatLookMuchWorseAreDismissedBelowWhatNeedsAnExactScore() {
        ScreenedLists lists = afterAStep(MEDIUM_WORSE);

        assertThat(estimate().score(backwards()).mediumScore())
                .isLessThan(estimate().score(start).mediumScore() - MARGIN.mediumScore());
        assertThat(lists.score(schedule(backwards())))
                .isEqualTo(HardMediumSoftLongScore.of(
                        played.hardScore(), played.mediumScore() - MEDIUM_WORSE - 1, played.softScore()));
    }

    @Test
    void theSameListsArePlayedOutAgain() {
        assertThat(afterAStep(MEDIUM_WORSE).score(schedule(start))).isEqualTo(played);
    }

    @Test
    void nothingIsDismissedWhereAllScoresMustBeExact() {
        assertThat(afterAStep(Long.MAX_VALUE).score(schedule(backwards())))
                .isEqualTo(new ListPlayer(season).score(backwards()));
    }

    @Test
    void nothingIsDismissedByItsEffortWhereTheEstimateKnowsLittleOfThat() {
        Season onlyWaits = season.season()
                .change()
                .goals(new Goals(0, 0, 0, 1, 0.01, 0, 0, 60, 0, 1, 0, 0, 0, 2, OptionalDouble.empty()))
                .season();
        CompiledSeason compiled = CompiledSeason.of(onlyWaits);

        assertThat(screenedByEffort(season)).isNotEqualTo(played);
        assertThat(screenedByEffort(compiled)).isEqualTo(new ListPlayer(compiled).score(start));
    }

    /** The same lists once more, when all that is no better in effort is dismissed. */
    private HardMediumSoftLongScore screenedByEffort(CompiledSeason of) {
        Stops stops = new Stops(of);
        stops.learn(start.orders(of.season()));
        EstimatedLists estimate = new EstimatedLists(of, new SeasonEstimate(of), stops);
        ScreenedLists lists = new ScreenedLists(new ListPlayer(of), estimate, HardMediumSoftLongScore.of(0, 100, -1));
        Schedule schedule =
                Schedule.of(new ListPlayer(of), new SeasonEstimate(of), new NearFields(new SeasonEstimate(of)), start);
        lists.score(schedule);
        lists.stepTaken(MEDIUM_WORSE);
        return lists.score(schedule);
    }

    private ScreenedLists afterAStep(long mediumWorse) {
        ScreenedLists lists = screened();
        lists.score(schedule(start));
        lists.stepTaken(mediumWorse);
        for (int planter = 0; planter < season.planterCount(); planter++) {
            lists.listChanged(planter);
        }
        return lists;
    }

    private ScreenedLists screened() {
        return new ScreenedLists(new ListPlayer(season), estimate(), MARGIN);
    }

    private EstimatedLists estimate() {
        Stops stops = new Stops(season);
        stops.learn(start.orders(season.season()));
        return new EstimatedLists(season, new SeasonEstimate(season), stops);
    }

    /** What opens last is planted first. */
    private FieldLists backwards() {
        return new FieldLists(start.byPlanter().stream()
                .map(list -> {
                    List<Integer> turned = new ArrayList<>(list);
                    Collections.reverse(turned);
                    return turned;
                })
                .toList());
    }

    private Schedule schedule(FieldLists lists) {
        SeasonEstimate estimate = new SeasonEstimate(season);
        return Schedule.of(new ListPlayer(season), estimate, new NearFields(estimate), lists);
    }
}

package freshfurrow.model.learn;

import static freshfurrow.model.learn.LearnFarm.FIRST;
import static freshfurrow.model.learn.LearnFarm.at;
import static freshfurrow.model.learn.LearnFarm.fit;
import static freshfurrow.model.learn.LearnFarm.planted;
import static freshfurrow.model.learn.LearnFarm.unfit;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.log.Fact;
import freshfurrow.model.season.Rain;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Bounds of drying, by hand. */
class DryGroundTest {
    private final LearnFarm farm = new LearnFarm();

    /**
     * Six rains of 20 mm, each a week after the one before. The ground is unfit on the third morning after and fit on the fourth: more than 3 days
     * for 20 mm, at most 4, so from 0.15 to 0.2 d/mm, not the 0.1 of the season file.
     */
    @Test
    void unfitOnOneDayAndFitOnTheNextBoundWhatTheRuleMaySay() {
        for (int rain = 0; rain < 6; rain++) {
            rain(7 * rain, 20);
            farm.add(at(7 * rain + 3, 7, 0), unfit("A")).add(at(7 * rain + 4, 7, 0), fit("A"));
        }

        Lesson lesson = drying();

        assertThat(lesson.observations()).isEqualTo(6);
        assertThat(lesson.groups()).isEqualTo(6);
        Estimate estimate = lesson.estimate().orElseThrow();
        assertThat(estimate.low()).isCloseTo(0.15, within(1e-12));
        assertThat(estimate.high()).isCloseTo(0.2, within(1e-12));
        assertThat(estimate.mean()).isCloseTo(0.175, within(1e-12));
        assertThat(estimate.spread()).isEmpty();
        assertThat(lesson.differs()).isTrue();
    }

    /** Fields that the same rain wetted are one group. */
    @Test
    void fieldsAfterTheSameRainAreOneGroup() {
        rain(0, 20);
        farm.add(at(1, 7, 0), unfit("A")).add(at(1, 7, 0), unfit("B"));

        assertThat(drying().observations()).isEqualTo(2);
        assertThat(drying().groups()).isEqualTo(1);
    }

    /** The rain of day 0 is binding: with 20 mm it may have closed the field until day 3, and the 4 mm of day 2 are no reason for it. */
    @Test
    void groundThatARainBeforeMayHaveKeptUnfitTellsNothingOfTheLast() {
        DryingBounds bounds = new DryingBounds(List.of(new Rain(FIRST, 0, 20), new Rain(FIRST.plusDays(2), 0, 4)));

        // 3 days for 20 mm or 1 day for 4 mm: more than 0.15 d/mm or more than 0.25 d/mm.
        assertThat(bounds.notBelow(at(3, 7, 0))).isCloseTo(0.15, within(1e-12));
        // Fit on day 4: at most 2 days for the 4 mm.
        assertThat(bounds.notAbove(at(4, 7, 0), Optional.empty())).isCloseTo(0.5, within(1e-12));
    }

    /** Found fit in the afternoon of day 3, it may have been unfit that morning, when the rule would have opened it: fit on day 4. */
    @Test
    void whatIsFoundFitInTheAfternoonWasFitByTheNextMorningForSure() {
        DryingBounds bounds = new DryingBounds(List.of(new Rain(FIRST, 0, 20)));

        assertThat(bounds.notAbove(at(3, 11, 59), Optional.empty())).isCloseTo(0.15, within(1e-12));
        assertThat(bounds.notAbove(at(3, 12, 0), Optional.empty())).isCloseTo(0.2, within(1e-12));
    }

    @Test
    void whatWasUnfitThatMorningWasNotFitThatMorning() {
        DryingBounds bounds = new DryingBounds(List.of(new Rain(FIRST, 0, 20)));

        assertThat(bounds.notAbove(at(3, 11, 0), Optional.of(at(3, 7, 0)))).isCloseTo(0.2, within(1e-12));
    }

    /** It may have been fit long before; that nobody planted it sooner says nothing of its ground. */
    @Test
    void aFieldThatWasOnlyPlantedIsNotLookedAt() {
        rain(0, 20);
        farm.add(at(5, 12, 0), planted(1, "L1"), 1000);

        assertThat(drying().observations()).isZero();
    }

    @Test
    void plantingEndsWhatUnfitBegan() {
        for (int rain = 0; rain < 6; rain++) {
            rain(7 * rain, 20);
            farm.add(at(7 * rain + 3, 7, 0), unfit("A")).add(at(7 * rain + 4, 11, 0), planted(1, "L" + rain));
        }

        assertThat(drying().estimate().orElseThrow().high()).isCloseTo(0.2, within(1e-12));
    }

    /** Never seen fit before the next rain: nobody knows how long it takes, only that it is more than 0.15 d/mm. */
    @Test
    void groundThatWasNeverSeenFitHasNoUpperBound() {
        for (int rain = 0; rain < 6; rain++) {
            rain(7 * rain, 20);
            farm.add(at(7 * rain + 3, 7, 0), unfit("A"));
        }

        assertThat(drying().groups()).isEqualTo(6);
        assertThat(drying().estimate()).isEmpty();
    }

    @Test
    void groundThatIsUnfitAfterItWasFitWithoutRainIsAContradiction() {
        rain(0, 20);
        farm.add(at(2, 7, 0), fit("A")).add(at(3, 7, 0), unfit("A"));

        assertThat(drying().observations()).isZero();
        assertThat(farm.lessons().leftOut()).isEqualTo(Map.of(LeftOut.UNFIT_AFTER_FIT, 2));
    }

    /** 1 mm is less than the 2 mm below which rain closes nothing. */
    @Test
    void aWordOnGroundBeforeAnyRainThatCountsIsLeftOut() {
        rain(0, 1);
        farm.add(at(1, 7, 0), unfit("A"));

        assertThat(farm.lessons().leftOut()).isEqualTo(Map.of(LeftOut.NO_RAIN, 1));
    }

    @Test
    void rainOfTheSeasonFileCountsAsThatOfTheLog() {
        farm.add(at(3, 7, 0), unfit("A")).add(at(4, 7, 0), fit("A"));

        Lessons lessons = farm.lessons(
                LearnFarm.SEASON.change().rain(List.of(new Rain(FIRST, 0, 20))).season());

        assertThat(LearnFarm.lesson(lessons, Taught.DRYING, "well").observations())
                .isEqualTo(1);
        assertThat(lessons.leftOut()).isEmpty();
    }

    private Lesson drying() {
        return farm.lesson(Taught.DRYING, "well");
    }

    private void rain(int day, double mm) {
        LocalDateTime noon = at(day, 12, 0);
        farm.add(noon, new Fact.RainMeasured(mm));
    }
}

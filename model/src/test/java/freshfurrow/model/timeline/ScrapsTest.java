package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A day of less than 1 ha of a larger field is a scrap. The planter plants 1 ha in 1,000 s. */
class ScrapsTest {
    @Test
    void theRestOfAFieldOnTheNextDayIsAScrap() {
        // 5 ha and 4.2 ha on the first day, 0.8 ha on the second
        assertThat(scraps(new WorkedSeason().days(3).field("A", 10).planter("P1", p -> p.hours("07:00/10:20:00"))))
                .isOne();
    }

    @Test
    void aFieldThatIsNoLargerIsNone() {
        assertThat(scraps(new WorkedSeason().field("A", 0.8))).isZero();
    }

    @Test
    void piecesOfOneDayCountTogether() {
        assertThat(scraps(new WorkedSeason().field("A", 5.3))).isZero();
    }

    private static int scraps(WorkedSeason season) {
        Timeline timeline = new Timeline(CompiledSeason.of(season.season()));
        timeline.run(new int[][] {{0}}, new int[] {1});
        assertThat(season.plan("A").plan().unserved()).isEmpty();
        return timeline.scraps();
    }
}

package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class RefillBoundTest {
    @Test
    void noPlanHasFewerFillsThanTheBoundWhereALoadMayBeAThousandthLargerThanTheTank() {
        // 1,000 L at 200 L/ha are 5 ha, with a thousandth 5.005 ha
        assertFillsAndBound(5.005, 1);
        assertFillsAndBound(5.005_001, 2);
    }

    private static void assertFillsAndBound(double areaHa, int fills) {
        WorkedPlan plan = new WorkedSeason().field("A", areaHa).plan("A");

        assertThat(plan.plan().totals().planterFills()).isEqualTo(fills);
        assertThat(plan.plan().totals().refillLowerBound()).isEqualTo(fills);
    }
}

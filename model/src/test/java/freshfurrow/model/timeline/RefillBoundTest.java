package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class RefillBoundTest {
    @Test
    void noPlanHasFewerFillsThanTheBoundWhereRoundingLetsALoadBeAHairLargerThanTheTank() {
        // 1,000 L at 200 L/ha are 5 ha; 2 dm2 more are let into the same load
        WorkedPlan plan = new WorkedSeason().field("A", 5.000002).plan("A");

        assertThat(plan.plan().totals().planterFills()).isOne();
        assertThat(plan.plan().totals().refillLowerBound()).isOne();
    }
}

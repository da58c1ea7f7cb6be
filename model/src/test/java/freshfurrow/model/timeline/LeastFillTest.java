package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.audit.Audit;
import freshfurrow.model.audit.Finding;
import freshfurrow.model.audit.Rule;
import org.junit.jupiter.api.Test;

/**
 * Without setup the first load comes from 07:20:00 to 07:28:20 and is planted until 08:51:40, 300 s before it rains: x m2 take 0.01 x s to
 * transfer and 0.1 x s to plant, so that 2,727 m2 of the tank's 5 ha would fit.
 */
class LeastFillTest {
    @Test
    void aSmallerPartOfTheTankIsNotFilledJustToPlantALittleMore() {
        WorkedPlan plan = beforeRain(0.1).field("A", 9).plan("A");

        assertThat(plan.fillStarts("P1")).containsExactly("1 07:20:00", "2 07:00:00");
    }

    @Test
    void aFillThatFinishesItsFieldMayBeSmaller() {
        WorkedPlan plan = beforeRain(0.1).field("A", 5.2).field("B", 5).plan("A B");

        assertThat(plan.fillStarts("P1")).startsWith("1 07:20:00", "1 08:51:40");
        assertThat(plan.load(2).litres()).isEqualTo(40);
    }

    @Test
    void withoutALeastFillAnyLittleIsBrought() {
        WorkedPlan plan = beforeRain(0).field("A", 9).plan("A");

        assertThat(plan.fillStarts("P1")).startsWith("1 07:20:00", "1 08:51:40");
    }

    @Test
    void theAuditRefusesASmallerFillThatFinishesNothing() {
        WorkedPlan anyLittle = beforeRain(0).field("A", 9).plan("A");
        WorkedPlan least = beforeRain(0.1).field("A", 9).plan("A");

        assertThat(Audit.check(least.season(), anyLittle.plan()))
                .extracting(Finding::rule)
                .containsExactly(Rule.LEAST_FILL);
    }

    private static WorkedSeason beforeRain(double leastFill) {
        return new WorkedSeason().days(4).rain(1, "08:56:40", 10).planter("P1", planter -> planter.fillSetup(0)
                .leastFill(leastFill));
    }
}

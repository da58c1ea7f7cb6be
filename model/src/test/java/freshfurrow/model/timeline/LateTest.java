package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** A planter that stands in its field from 07:00:00 to 08:36:40: 800 s of transfer and 5000 s of planting, 5 ha a day. */
class LateTest {
    private static WorkedSeason fiveHectaresADay(int days) {
        return new WorkedSeason()
                .days(days)
                .planter("P1", planter -> planter.unfoldedAt("A").hours("07:00/08:36:40"))
                .field("A", 20, field -> field.window(1, 1).lateWeight(2));
    }

    @Test
    void areaPlantedAfterTheWindowCountsForEachDay() {
        // 5 ha x (0 + 1 + 2 + 3) days = 30 ha-days, weighted 60
        WorkedPlan plan = fiveHectaresADay(4).plan("A");

        assertThat(plan.fillStarts("P1")).containsExactly("1 07:00:00", "2 07:00:00", "3 07:00:00", "4 07:00:00");
        assertThat(plan.plan().totals().lateHaDays()).isEqualTo(30, within(1e-9));
        assertThat(plan.plan().score().medium()).isEqualTo(-6000);
    }

    @Test
    void earlyDaysCountInTheSoftScore() {
        // 4 fills x 30 + 2 trips x 20 + driving (100 + 3 x 200 s) 11.7 + 30 ha-days since the season began = 201.7
        WorkedPlan plan = fiveHectaresADay(4).plan("A");

        assertThat(plan.plan().score().soft()).isEqualTo(-202);
    }

    @Test
    void areaThatIsNeverPlantedCostsMoreThanTheLatest() {
        // 5 ha x 1 day x 2 + 10 ha x (2 + 1) days x 2 = 70
        WorkedPlan plan = fiveHectaresADay(2).plan("A");

        assertThat(plan.unserved()).containsExactly("A 10.000 ha");
        assertThat(plan.plan().totals().lateHaDays()).isEqualTo(5, within(1e-9));
        assertThat(plan.plan().score().medium()).isEqualTo(-7000);
    }
}

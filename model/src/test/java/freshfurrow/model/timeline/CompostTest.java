package freshfurrow.model.timeline;

import static freshfurrow.model.timeline.WorkedSeason.day;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.season.CompostLot;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A full tank takes 50 kg. */
class CompostTest {
    @Test
    void aLotRunsOutAndPlantingGoesOnWithTheDelivery() {
        WorkedPlan plan = new WorkedSeason()
                .lots(new CompostLot("old", 50, day(1)), new CompostLot("new", 1000, day(3)))
                .field("A", 10)
                .plan("A");

        assertThat(plan.planter("P1", "fill"))
                .containsExactly("1 07:20:00 - 1 07:33:20 fill A", "3 07:00:00 - 3 07:13:20 fill A");
        assertThat(plan.planter("P1", "wait"))
                .allSatisfy(wait -> assertThat(wait).endsWith("wait A compost"));
        assertThat(plan.plan().batches().get(1).lots()).isEqualTo(Map.of("new", 50.0));
    }

    @Test
    void waitingForCompostCountsInWorkingHours() {
        // from 08:56:40 to 19:00:00 on day 1 and 12 h on day 2: 603 min 20 s + 720 min
        WorkedPlan plan = new WorkedSeason()
                .lots(new CompostLot("old", 50, day(1)), new CompostLot("new", 1000, day(3)))
                .field("A", 10)
                .plan("A");

        assertThat(plan.plan().totals().waitMin()).isEqualTo(79_400 / 60.0, within(0.05));
    }

    @Test
    void aLoadIsNoLargerThanTheCompostThatIsLeft() {
        // 70 - 50 = 20 kg are 2 ha; the last 3 ha wait for day 2
        WorkedPlan plan = new WorkedSeason()
                .lots(new CompostLot("old", 70, day(1)), new CompostLot("new", 1000, day(2)))
                .field("A", 10)
                .plan("A");

        assertThat(plan.plan().loads()).extracting(load -> load.litres()).containsExactly(1000.0, 400.0, 600.0);
        assertThat(plan.fillStarts("P1")).containsExactly("1 07:20:00", "1 08:56:40", "2 07:00:00");
    }

    @Test
    void aBatchTakesTheRestOfTheEarlierLotFirst() {
        WorkedPlan plan = new WorkedSeason()
                .lots(new CompostLot("new", 1000, day(1)), new CompostLot("old", 70, day(1).minusDays(9)))
                .field("A", 10)
                .plan("A");

        assertThat(plan.plan().batches())
                .extracting(batch -> batch.lots())
                .containsExactly(Map.of("old", 50.0), Map.of("old", 20.0, "new", 30.0));
    }

    @Test
    void whatNoCompostEverComesForIsUnserved() {
        WorkedPlan plan = new WorkedSeason()
                .lots(new CompostLot("old", 70, day(1)))
                .field("A", 10)
                .field("B", 5)
                .plan("A B");

        assertThat(plan.unserved()).containsExactly("A 3.000 ha", "B 5.000 ha");
        assertThat(plan.plan().unserved())
                .allSatisfy(left -> assertThat(left.why()).contains("compost"));
        assertThat(plan.plan().totals().compostKg()).isEqualTo(70, within(1e-6));
        assertThat(plan.plan().totals().unservedHa()).isEqualTo(8, within(1e-9));
    }
}

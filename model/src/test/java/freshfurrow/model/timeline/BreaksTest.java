package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Loads of 1,000 L one after the other from 07:20:00 on, each 800 s of transfer and 5000 s of planting: the second is asked
 * for at 08:56:40, the third at 10:33:20 and transferred by 10:46:40.
 */
class BreaksTest {
    @Test
    void plantingGoesOnAfterLunch() {
        WorkedPlan plan = new WorkedSeason()
                .planter("P1", planter -> planter.hours("07:00/12:00", "12:30/19:00"))
                .field("A", 15)
                .plan("A");

        // 73 min 20 s to noon plant 4.4 ha; the last 0.6 ha take 600 s
        assertThat(plan.planter("P1", "plant"))
                .containsExactly(
                        "1 07:33:20 - 1 08:56:40 plant A 5.000 ha",
                        "1 09:10:00 - 1 10:33:20 plant A 5.000 ha",
                        "1 10:46:40 - 1 12:00:00 plant A 4.400 ha",
                        "1 12:30:00 - 1 12:40:00 plant A 0.600 ha");
        assertThat(plan.loads()).last().isEqualTo("P1 R1 1000.000 L, old 1 15:33:20, used up 1 12:40:00");
    }

    @Test
    void aTankThatIsEmptyAtNoonSharpIsFilledAfterLunch() {
        // the planter starts at 10:03:20, is filled from 10:23:20 to 10:36:40 and empty 5000 s later
        WorkedPlan plan = new WorkedSeason()
                .planter("P1", planter -> planter.hours("10:03:20/12:00", "12:30/19:00"))
                .field("A", 6)
                .plan("A");

        assertThat(plan.planter("P1"))
                .containsExactly(
                        "1 10:03:20 - 1 10:23:20 move yard to A",
                        "1 10:23:20 - 1 10:36:40 fill A",
                        "1 10:36:40 - 1 12:00:00 plant A 5.000 ha",
                        "1 12:30:00 - 1 12:36:40 fill A", // 200 L: 300 + 100 s
                        "1 12:36:40 - 1 12:53:20 plant A 1.000 ha");
        assertThat(plan.plan().totals().waitMin()).isZero();
    }

    @Test
    void aTransferThatDoesNotFitBeforeLunchStartsAfterIt() {
        // asked for at 11:50:00; 800 s are more than the 600 s to noon
        WorkedPlan plan = new WorkedSeason()
                .planter("P1", planter -> planter.hours("09:53:20/12:00", "12:30/19:00"))
                .field("A", 10)
                .plan("A");

        assertThat(plan.planter("P1", "wait", "fill"))
                .containsExactly(
                        "1 10:13:20 - 1 10:26:40 fill A",
                        "1 11:50:00 - 1 12:30:00 wait A hours",
                        "1 12:30:00 - 1 12:43:20 fill A");
        assertThat(plan.plan().totals().waitMin()).isZero();
    }

    @Test
    void nothingIsMixedToStandOvernight() {
        // asked for at 10:33:20 with 5200 s to noon: 300 + 0.11 x = 5200 gives 44,545 m2 = 890.9 L
        WorkedPlan plan = new WorkedSeason()
                .planter("P1", planter -> planter.hours("07:00/12:00"))
                .field("A", 15)
                .plan("A");

        assertThat(plan.load(3).litres()).isBetween(885.9, 890.91);
        assertThat(plan.fillStarts("P1")).containsExactly("1 07:20:00", "1 08:56:40", "1 10:33:20", "2 07:00:00");
        // 3000 L in all
        assertThat(plan.load(4).litres()).isEqualTo(1000 - plan.load(3).litres(), within(0.001));
    }

    @Test
    void aLongHoldTimeLetsALoadStandOvernight() {
        // batch from 10:18:20 to 10:33:20, old 21 h later; 4.4 ha before noon, 0.6 ha next morning
        WorkedPlan plan = new WorkedSeason()
                .hold(21 * 3600)
                .planter("P1", planter -> planter.hours("07:00/12:00"))
                .field("A", 15)
                .plan("A");

        assertThat(plan.planter("P1", "plant"))
                .endsWith("1 10:46:40 - 1 12:00:00 plant A 4.400 ha", "2 07:00:00 - 2 07:10:00 plant A 0.600 ha");
        assertThat(plan.loads()).last().isEqualTo("P1 R1 1000.000 L, old 2 07:33:20, used up 2 07:10:00");
    }

    @Test
    void aFullTankInTheMorningIsBetterThanAPartOfItWhenItsTransferDoesNotFitAnyMore() {
        // asked for at 08:56:40 with 700 s to go: the transfer of 1000 L takes 800 s and starts the next morning
        WorkedPlan plan = new WorkedSeason()
                .planter("P1", planter -> planter.hours("07:00/09:08:20"))
                .field("A", 10)
                .plan("A");

        assertThat(plan.fillStarts("P1")).containsExactly("1 07:20:00", "2 07:00:00");
        assertThat(plan.load(2).litres()).isEqualTo(1000);
    }

    @Test
    void aLoadThatIsGoneSoonerThanItsTransferTakesIsNotWorthAFill() {
        // a tank of 700 L: transfer 650 s to 07:30:50, 3.5 ha to 08:29:10. Then 660 s to go: 300 + 0.11 x = 660 gives
        // 3273 m2, planted in 327 s after 333 s of transfer
        WorkedPlan plan = new WorkedSeason()
                .planter("P1", planter -> planter.tank(700).hours("07:00/08:40:10"))
                .field("A", 7)
                .plan("A");

        assertThat(plan.fillStarts("P1")).containsExactly("1 07:20:00", "2 07:00:00");
        assertThat(plan.load(2).litres()).isEqualTo(700);
    }

    @Test
    void aLoadThatLastsLongerThanItsTransferIsWorthAFill() {
        // 700 s to go: 300 + 0.11 x = 700 gives 3636 m2 = 72.7 L, planted in 364 s after 336 s of transfer
        WorkedPlan plan = new WorkedSeason()
                .planter("P1", planter -> planter.tank(700).hours("07:00/08:40:50"))
                .field("A", 7)
                .plan("A");

        assertThat(plan.fillStarts("P1")).containsExactly("1 07:20:00", "1 08:29:10", "2 07:00:00");
        assertThat(plan.load(2).litres()).isBetween(69.2, 72.73);
    }
}

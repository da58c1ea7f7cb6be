package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.plan.Plan.Totals;
import org.junit.jupiter.api.Test;

class OneLoadTest {
    private final WorkedPlan plan = new WorkedSeason().field("A", 5).plan("A");

    @Test
    void aPlanterArrivesIsFilledAndPlants() {
        assertThat(plan.planter("P1"))
                .containsExactly(
                        "1 07:00:00 - 1 07:20:00 move yard to A", // 600 s + 3000 m / 5 m/s
                        "1 07:20:00 - 1 07:33:20 fill A", // 300 s + 1000 L / 2 L/s
                        "1 07:33:20 - 1 08:56:40 plant A 5.000 ha"); // 50,000 m2 / 10 m2/s
    }

    @Test
    void theRigIsReadyBeforeAndEndsItsBatchAsTheTransferStarts() {
        assertThat(plan.rig("R1"))
                .containsExactly(
                        "1 06:00:00 - 1 06:01:40 move yard to well",
                        "1 06:01:40 - 1 06:08:20 draw well 2000.000 L",
                        "1 06:08:20 - 1 06:11:40 move well to A",
                        "1 07:05:00 - 1 07:20:00 extract A", // 900 s
                        "1 07:20:00 - 1 07:33:20 transfer A 1000.000 L",
                        "1 07:33:20 - 1 07:36:20 clean A");
    }

    @Test
    void theLoadIsOldFiveHoursAfterItsBatch() {
        assertThat(plan.loads()).containsExactly("P1 R1 1000.000 L, old 1 12:20:00, used up 1 08:56:40");
        assertThat(plan.load(1).appliedL()).isEqualTo(1000);
        assertThat(plan.load(1).dumpedL()).isZero();
    }

    @Test
    void theBatchTakesItsCompostAndDrumWater() {
        // 5 ha x 10 kg/ha is one full batch
        assertThat(plan.plan().batches()).singleElement().satisfies(batch -> {
            assertThat(batch.compostKg()).isEqualTo(50);
            assertThat(batch.waterL()).isEqualTo(160);
            assertThat(batch.lots()).containsOnlyKeys("heap").containsEntry("heap", 50.0);
        });
    }

    @Test
    void theTotalsAddItUp() {
        Totals totals = plan.plan().totals();
        assertThat(totals.areaHa()).isEqualTo(5);
        assertThat(totals.unservedHa()).isZero();
        assertThat(totals.lateHaDays()).isZero();
        assertThat(totals.planterFills()).isEqualTo(1);
        assertThat(totals.waterTrips()).isEqualTo(1);
        assertThat(totals.batches()).isEqualTo(1);
        assertThat(totals.compostKg()).isEqualTo(50);
        assertThat(totals.dumpedL()).isZero();
        assertThat(totals.waitMin()).isZero();
        assertThat(totals.driveKm()).isEqualTo(6, within(1e-9)); // planter 3, rig 1 + 2
        assertThat(totals.smallestMarginMin()).isEqualTo(12_200 / 60.0, within(0.05)); // 12:20:00 - 08:56:40
        assertThat(plan.time(totals.finish())).isEqualTo("1 08:56:40");
    }

    @Test
    void theScoreCountsFillTripAndDriving() {
        // fill 30 + trip 20 + driving (planter 600 s + rig 300 s) 15 min
        assertThat(plan.plan().score().hard()).isZero();
        assertThat(plan.plan().score().medium()).isZero();
        assertThat(plan.plan().score().soft()).isEqualTo(-65);
    }
}

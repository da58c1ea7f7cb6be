package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Batches of 10 kg: 1 ha each. */
class BatchesTest {
    private final WorkedPlan plan = new WorkedSeason()
            .rig("R1", rig -> rig.batchCompost(10).hours("05:00/20:00"))
            .field("A", 4.5)
            .plan("A");

    @Test
    void severalBatchesFollowOneAnotherWithACleanAfterEach() {
        // 45 kg: five batches of 9 kg, 810 s each; 180 s of cleaning between
        assertThat(plan.rig("R1", "extract", "clean", "transfer"))
                .containsExactly(
                        "1 06:00:30 - 1 06:14:00 extract A",
                        "1 06:14:00 - 1 06:17:00 clean A",
                        "1 06:17:00 - 1 06:30:30 extract A",
                        "1 06:30:30 - 1 06:33:30 clean A",
                        "1 06:33:30 - 1 06:47:00 extract A",
                        "1 06:47:00 - 1 06:50:00 clean A",
                        "1 06:50:00 - 1 07:03:30 extract A",
                        "1 07:03:30 - 1 07:06:30 clean A",
                        "1 07:06:30 - 1 07:20:00 extract A",
                        "1 07:20:00 - 1 07:32:30 transfer A 900.000 L", // 300 + 450 s
                        "1 07:32:30 - 1 07:35:30 clean A");
    }

    @Test
    void theOldestBatchSetsTheDeadline() {
        // 06:14:00 + 5 h; planted in 4500 s from 07:32:30
        assertThat(plan.loads()).containsExactly("P1 R1 900.000 L, old 1 11:14:00, used up 1 08:47:30");
        assertThat(plan.load(1).batches()).hasSize(5);
    }

    @Test
    void theBatchesOfALoadAreAlike() {
        assertThat(plan.plan().batches())
                .extracting(batch -> batch.compostKg())
                .containsExactly(9.0, 9.0, 9.0, 9.0, 9.0);
        assertThat(plan.plan().batches())
                .extracting(batch -> batch.waterL())
                .containsExactly(144.0, 144.0, 144.0, 144.0, 144.0);
    }

    @Test
    void aSmallBatchTakesAThirdOfAFullOnesTime() {
        // 0.1 ha: 1 kg, a tenth of a batch, which would be 90 s
        WorkedPlan small = new WorkedSeason()
                .rig("R1", rig -> rig.batchCompost(10).hours("05:00/20:00"))
                .field("A", 0.1)
                .plan("A");

        assertThat(small.rig("R1", "extract")).containsExactly("1 07:15:00 - 1 07:20:00 extract A");
    }

    @Test
    void noBatchTakesLessThanTheRigsLeastBatchTime() {
        WorkedPlan small = new WorkedSeason()
                .rig("R1", rig -> rig.batchCompost(10).leastBatchTime(600).hours("05:00/20:00"))
                .field("A", 0.1)
                .plan("A");

        assertThat(small.rig("R1", "extract")).containsExactly("1 07:10:00 - 1 07:20:00 extract A");
    }

    @Test
    void thereIsNoBatchOfLessThanAGram() {
        // 0.00004 ha at 10 kg/ha ask for 0.4 g
        WorkedPlan garden = new WorkedSeason().field("A", 0.000_04).plan("A");

        assertThat(garden.plan().batches())
                .extracting(batch -> batch.compostKg())
                .containsExactly(0.001);
    }

    @Test
    void beforeRainAPlanterTakesNoEverSmallerLoads() {
        // the rain of 08:56 stops planting; with no setup a last load of 100 m2 and more is worth while, smaller ones
        // are not
        WorkedPlan rained = new WorkedSeason()
                .rain(1, "08:56", 10)
                .planter("P1", planter -> planter.fillSetup(0))
                .field("A", 10)
                .plan("A");

        assertThat(rained.plan().loads())
                .allSatisfy(load -> assertThat(load.litres()).isGreaterThanOrEqualTo(2));
    }

    @Test
    void aBatchToWhichAGramIsLeftHoldsHoweverItIsRounded() {
        // a tank of 5 ha takes 50.000,45 kg, 0.99 g more than a batch; of two such one is told as 50.001 kg
        WorkedPlan loads = new WorkedSeason()
                .recipe("standard", 200, 10.000_09, 5 * 3600)
                .rig("R1", rig -> rig.batchCompost(49.999_46))
                .field("A", 20)
                .plan("A");

        assertThat(loads.plan().batches())
                .extracting(batch -> batch.compostKg())
                .containsExactly(50.0, 50.001, 50.0, 50.001);
    }
}

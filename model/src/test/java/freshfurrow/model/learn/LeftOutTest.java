package freshfurrow.model.learn;

import static freshfurrow.model.learn.LearnFarm.at;
import static freshfurrow.model.learn.LearnFarm.batch;
import static freshfurrow.model.learn.LearnFarm.planted;
import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.log.Fact;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What teaches nothing, and why. */
class LeftOutTest {
    private final LearnFarm farm = new LearnFarm();

    @Test
    void voidEntriesAreLeftOutAndCounted() {
        farm.add(at(0, 9, 0), batch(20), 1000)
                .add(at(0, 10, 0), batch(20), 60_000)
                .add(at(0, 11, 0), new Fact.Voided(2));

        assertThat(observations(Taught.BATCH_TIME)).isEqualTo(1);
        assertThat(farm.lessons().leftOut()).isEqualTo(Map.of(LeftOut.VOID, 1));
    }

    /** So are all lines that were taken from a plan. */
    @Test
    void workWithoutItsTimeIsLeftOutAndOtherFactsAreNoWork() {
        farm.add(at(0, 9, 0), batch(20))
                .add(at(0, 10, 0), planted(1, "L1"))
                .add(at(0, 10, 5), new Fact.WaterDrawn("well", "R1", 100))
                .add(at(0, 10, 6), new Fact.Noted());

        assertThat(farm.lessons().leftOut()).isEqualTo(Map.of(LeftOut.NO_TIME, 2));
    }

    @Test
    void plantingByNobodyInParticularIsLeftOut() {
        farm.add(at(0, 9, 0), new Fact.Planted("A", 1, Optional.empty(), Optional.empty()), 1000);

        assertThat(farm.lessons().leftOut()).isEqualTo(Map.of(LeftOut.NO_MACHINE, 1));
    }

    /** One from 8:40 to 9:00 and one from 8:50 to 9:10; the third, from 9:08, is 2 minutes off by the clocks, and stays. */
    @Test
    void neitherOfTwoPiecesOfAMachineAtTheSameTimeCounts() {
        farm.add(at(0, 9, 0), batch(20), 1200)
                .add(at(0, 9, 10), batch(20), 1200)
                .add(at(0, 9, 28), batch(20), 1200);

        assertThat(observations(Taught.BATCH_TIME)).isEqualTo(1);
        assertThat(farm.lessons().leftOut()).isEqualTo(Map.of(LeftOut.OVERLAP, 2));
    }

    /** A drive that took all morning goes on while both batches are made. */
    @Test
    void aTimeThatIsFarTooLongContradictsAllThatItGoesOnWith() {
        farm.add(at(0, 8, 0), batch(20), 1000)
                .add(at(0, 9, 0), batch(20), 1000)
                .add(at(0, 10, 0), new Fact.Driven("R1", "yard", "A"), 4 * 3600);

        assertThat(farm.lessons().leftOut()).isEqualTo(Map.of(LeftOut.OVERLAP, 3));
    }

    @Test
    void whatTwoMachinesDoAtTheSameTimeIsNoContradiction() {
        farm.add(at(0, 9, 0), batch(20), 1200).add(at(0, 9, 0), planted(1, "L9"), 3600);

        assertThat(farm.lessons().leftOut()).isEmpty();
    }

    @Test
    void ofTwoTransfersOfALoadNobodyKnowsWhichIsRight() {
        farm.add(at(0, 9, 0), new Fact.Transferred("R1", 1000, Optional.of("L1")), 500)
                .add(at(0, 12, 0), new Fact.Transferred("R1", 1000, Optional.of("L1")), 300)
                .add(at(0, 15, 0), new Fact.Transferred("R1", 1000, Optional.empty()), 500);

        assertThat(observations(Taught.TRANSFER_RATE)).isEqualTo(1);
        assertThat(farm.lessons().leftOut()).isEqualTo(Map.of(LeftOut.TWO_TRANSFERS, 2));
    }

    /** The transfer ends at 9:00, and planting from it would have begun at 8:30. */
    @Test
    void aLoadThatIsPlantedBeforeItWasTransferredTeachesNothing() {
        farm.add(at(0, 9, 0), new Fact.Transferred("R1", 1000, Optional.of("L1")), 500)
                .add(at(0, 9, 30), planted(3, "L1"), 3600);

        assertThat(farm.lessons().leftOut()).isEqualTo(Map.of(LeftOut.OUT_OF_ORDER, 2));
    }

    /** The batch ends at 9:00, and the transfer would have begun at 8:40; a batch without a time is left out for that. */
    @Test
    void aLoadThatIsTransferredBeforeItsBatchWasMadeTeachesNothing() {
        farm.add(at(0, 9, 0), batch(20, "L1"))
                .add(at(0, 9, 10), new Fact.Transferred("R1", 1000, Optional.of("L1")), 1800);

        assertThat(farm.lessons().leftOut()).isEqualTo(Map.of(LeftOut.NO_TIME, 1, LeftOut.OUT_OF_ORDER, 1));
    }

    private int observations(Taught figure) {
        return farm.lesson(figure, "R1").observations();
    }
}

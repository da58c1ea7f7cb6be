package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** P1 stands at A and P2 at B at 07:20:00. */
class SharedRigsTest {
    private static WorkedSeason twoPlanters() {
        return new WorkedSeason()
                .planter("P2", planter -> planter)
                .field("A", 5)
                .field("B", 5);
    }

    @Test
    void theSecondPlanterWaitsUntilTheRigHasServedTheFirst() {
        // transfer to 07:33:20, clean to 07:36:20, drive to 07:38:00, batch to 07:53:00
        WorkedPlan plan = twoPlanters().plan("A", "B");

        assertThat(plan.planter("P1", "wait", "fill")).containsExactly("1 07:20:00 - 1 07:33:20 fill A");
        assertThat(plan.planter("P2", "wait", "fill"))
                .containsExactly("1 07:20:00 - 1 07:53:00 wait B rig", "1 07:53:00 - 1 08:06:20 fill B");
        assertThat(plan.plan().totals().waitMin()).isEqualTo(33);
    }

    @Test
    void anEarlierNeedIsServedFirstWhicheverPlanterHasIt() {
        // P2 is nearer: 600 s + 1500 m / 5 m/s, at B at 07:15:00; then P1 waits from 07:20:00 to 07:15:00 + 33 min
        WorkedPlan plan = twoPlanters().road("yard", "B", 1500).plan("A", "B");

        assertThat(plan.planter("P2", "wait", "fill")).containsExactly("1 07:15:00 - 1 07:28:20 fill B");
        assertThat(plan.planter("P1", "wait", "fill"))
                .containsExactly("1 07:20:00 - 1 07:48:00 wait A rig", "1 07:48:00 - 1 08:01:20 fill A");
    }

    @Test
    void theRigThatCanTransferEarlierIsChosen() {
        // R1 starts at 07:00:00 and is ready at 07:26:40; R2 drives further but starts at 06:00:00
        WorkedPlan plan = new WorkedSeason()
                .rig("R1", rig -> rig.hours("07:00/20:00"))
                .rig("R2", rig -> rig.at("shed"))
                .road("shed", "well", 9000)
                .field("A", 5)
                .plan("A");

        assertThat(plan.loads()).containsExactly("P1 R2 1000.000 L, old 1 12:20:00, used up 1 08:56:40");
        assertThat(plan.rig("R1")).isEmpty();
    }

    @Test
    void ofTwoRigsThatAreReadyInTimeTheOneThatDrivesLessIsChosen() {
        WorkedPlan plan = new WorkedSeason()
                .rig("R2", rig -> rig.at("shed"))
                .road("shed", "well", 500)
                .field("A", 5)
                .plan("A");

        assertThat(plan.load(1).rig()).isEqualTo("R2");
    }

    @Test
    void ofTwoEqualRigsTheFirstInTheFileIsChosen() {
        WorkedPlan plan = new WorkedSeason().rig("R2", rig -> rig).field("A", 5).plan("A");

        assertThat(plan.load(1).rig()).isEqualTo("R1");
    }

    @Test
    void twoRigsQueueAtOneHose() {
        // both reach the well at 07:01:40. R1 draws to 07:08:20, is at A at 07:11:40, its batch ends at 07:26:40.
        // R2 draws from 07:08:20 to 07:15:00, is at B at 07:18:20, its batch ends at 07:33:20.
        WorkedPlan plan = twoPlanters()
                .rig("R1", rig -> rig.hours("07:00/20:00"))
                .rig("R2", rig -> rig.hours("07:00/20:00"))
                .plan("A", "B");

        assertThat(plan.rig("R1", "draw")).containsExactly("1 07:01:40 - 1 07:08:20 draw well 2000.000 L");
        assertThat(plan.rig("R2", "draw")).containsExactly("1 07:08:20 - 1 07:15:00 draw well 2000.000 L");
        assertThat(plan.fillStarts("P1")).containsExactly("1 07:26:40");
        assertThat(plan.planter("P2", "wait", "fill"))
                .containsExactly("1 07:20:00 - 1 07:33:20 wait B water", "1 07:33:20 - 1 07:46:40 fill B");
        assertThat(plan.plan().totals().waitMin()).isEqualTo((400 + 800) / 60.0, within(0.05));
    }

    @Test
    void aFieldInTheListOfAPlanterThatMayNotPlantItBreaksARule() {
        WorkedSeason season =
                new WorkedSeason().planter("P2", planter -> planter).field("A", 5, field -> field.only("P2"));

        WorkedPlan forbidden = season.forbiddenPlan("A", "");
        assertThat(forbidden.plan().score().hard()).isEqualTo(-1);
        assertThat(forbidden.unserved()).containsExactly("A 5.000 ha");

        WorkedPlan allowed = season.plan("", "A");
        assertThat(allowed.plan().score().hard()).isZero();
        assertThat(allowed.planter("P2", "plant")).containsExactly("1 07:33:20 - 1 08:56:40 plant A 5.000 ha");
    }
}

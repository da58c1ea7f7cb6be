package freshfurrow.model.timeline;

import static freshfurrow.model.timeline.WorkedSeason.day;
import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.audit.Audit;
import freshfurrow.model.audit.Finding;
import freshfurrow.model.audit.Rule;
import freshfurrow.model.season.CompostLot;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A full tank is 5 ha, in the ground from 07:33:20 to 08:56:40; 1 ha is planted in 1,000 s and takes 10 kg of compost. */
class WithoutExtractTest {
    @Test
    void aPlanterGoesOnWithoutExtractWhenTheCompostIsGone() {
        WorkedPlan plan = new WorkedSeason()
                .lots(new CompostLot("heap", 50, day(1)))
                .untreated(4)
                .field("A", 8)
                .plan("A");

        assertThat(plan.planter("P1", "plant", "without"))
                .containsExactly(
                        "1 07:33:20 - 1 08:56:40 plant A 5.000 ha", "1 08:56:40 - 1 09:46:40 without A 3.000 ha");
        assertThat(plan.plan().totals().areaHa()).isEqualTo(8);
        assertThat(plan.plan().totals().untreatedHa()).isEqualTo(3);
        assertThat(plan.plan().score().medium()).isEqualTo(-3 * 4 * 100);
    }

    @Test
    void whereItIsNotAllowedTheRestStaysUnplanted() {
        WorkedPlan plan = new WorkedSeason()
                .lots(new CompostLot("heap", 50, day(1)))
                .field("A", 8)
                .plan("A");

        assertThat(plan.unserved()).containsExactly("A 3.000 ha");
        assertThat(plan.plan().totals().untreatedHa()).isZero();
    }

    @Test
    void aPlanterGoesOnWithoutExtractUntilTheNextLotIsThere() {
        // 36,200 s from 08:56:40 to 19:00:00; on the second day the rig makes a batch of 50 kg from 06:00 on
        WorkedPlan plan = new WorkedSeason()
                .lots(new CompostLot("heap", 50, day(1)), new CompostLot("delivery", 50, day(2)))
                .untreated(4)
                .field("A", 46.2)
                .plan("A");

        assertThat(plan.planter("P1", "plant", "without"))
                .containsExactly(
                        "1 07:33:20 - 1 08:56:40 plant A 5.000 ha",
                        "1 08:56:40 - 1 19:00:00 without A 36.200 ha",
                        "2 07:13:20 - 2 08:36:40 plant A 5.000 ha");
    }

    @Test
    void aPlanterDoesNotWaitForARigForLongerThanItsLongestWait() {
        // the rig is in the field at 09:11:40, and has a batch for 5 ha at 09:26:40: 7,600 s after 07:20:00
        WorkedPlan plan = lateRig(30 * 60).plan("A");

        assertThat(plan.planter("P1", "fill", "wait", "plant", "without"))
                .containsExactly(
                        "1 07:20:00 - 1 09:26:40 without A 7.600 ha",
                        "1 09:26:40 - 1 09:39:00 fill A",
                        "1 09:39:00 - 1 10:52:20 plant A 4.400 ha");
    }

    @Test
    void aPlanterWaitsForARigForAsLongAsItMay() {
        WorkedPlan plan = lateRig(3 * 3600).plan("A");

        assertThat(plan.planter("P1", "fill", "wait").subList(0, 2))
                .containsExactly("1 07:20:00 - 1 09:26:40 wait A rig", "1 09:26:40 - 1 09:40:00 fill A");
        assertThat(plan.plan().totals().untreatedHa()).isZero();
    }

    @Test
    void aFieldThatIsToBePlantedWithoutGetsNoLoad() {
        // 5,000 s for A, 800 s to B
        WorkedPlan plan =
                new WorkedSeason().untreated(4).field("A", 5).field("B", 5).planWithout(Set.of("A"), "A B");

        assertThat(plan.planter("P1"))
                .containsExactly(
                        "1 07:00:00 - 1 07:20:00 move yard to A",
                        "1 07:20:00 - 1 08:43:20 without A 5.000 ha",
                        "1 08:43:20 - 1 08:56:40 move A to B",
                        "1 08:56:40 - 1 09:10:00 fill B",
                        "1 09:10:00 - 1 10:33:20 plant B 5.000 ha");
        assertThat(plan.plan().withoutExtract()).containsExactly("A");
    }

    @Test
    void nothingElseIsMadeForAFieldThatGoesWithout() {
        WorkedPlan plan = new WorkedSeason().untreated(4).field("A", 5).planWithout(Set.of("A"), "A");

        assertThat(plan.rig("R1")).isEmpty();
        assertThat(plan.plan().totals().compostKg()).isZero();
    }

    @Test
    void theAuditRefusesItWhereTheSeasonDoesNotAllowIt() {
        WorkedPlan plan = new WorkedSeason().untreated(4).field("A", 5).planWithout(Set.of("A"), "A");

        assertThat(Audit.check(new WorkedSeason().field("A", 5).season(), plan.plan()))
                .extracting(Finding::rule)
                .contains(Rule.WITHOUT_EXTRACT);
    }

    @Test
    void theAuditRefusesALoadForAFieldThatIsToGoWithout() {
        WorkedSeason season = new WorkedSeason().untreated(4).field("A", 5);
        WorkedPlan withExtract = season.plan("A");
        WorkedPlan without = season.planWithout(Set.of("A"), "A");

        assertThat(Audit.check(
                        withExtract.season(),
                        withExtract.goingWithout(without.plan().withoutExtract())))
                .extracting(Finding::rule)
                .containsExactly(Rule.WITHOUT_EXTRACT);
    }

    @Test
    void theAuditRefusesAWaitForARigThatIsTooLong() {
        WorkedPlan patient = lateRig(3 * 3600).plan("A");

        assertThat(Audit.check(lateRig(30 * 60).season(), patient.plan()))
                .extracting(Finding::rule)
                .containsExactly(Rule.LONGEST_WAIT);
    }

    private static WorkedSeason lateRig(int longestWaitS) {
        return new WorkedSeason()
                .rig("R1", rig -> rig.hours("09:00/20:00"))
                .planter("P1", planter -> planter.longestWait(longestWaitS))
                .untreated(4)
                .field("A", 12);
    }
}

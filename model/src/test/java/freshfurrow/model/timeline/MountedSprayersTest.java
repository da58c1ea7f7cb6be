package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.audit.Audit;
import freshfurrow.model.audit.Finding;
import freshfurrow.model.audit.Rule;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanStart;
import freshfurrow.model.progress.StandingAt;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Standing;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * A sprayer that is mounted on rig R1: it is R1. R1 draws 2,000 L and stands in A at 06:11:40 with all that a load needs; it needs 300 s to
 * get ready to spray and nothing to pump, and sprays 1 ha in 1,000 s. Between fields it folds and unfolds for 600 s and drives 100 s.
 */
class MountedSprayersTest {
    @Test
    void aRigSpraysOutOfItsOwnTankWithoutATransfer() {
        // 5 ha: 1,000 L, one batch of 900 s to 06:26:40, ready at 06:31:40, sprayed in 5,000 s; then the drum is
        // cleaned
        WorkedPlan plan = sprayed("A", 5).plan("", "A");

        assertThat(plan.rig("R1"))
                .containsExactly(
                        "1 06:00:00 - 1 06:01:40 move yard to well",
                        "1 06:01:40 - 1 06:08:20 draw well 2000.000 L",
                        "1 06:08:20 - 1 06:11:40 move well to A",
                        "1 06:11:40 - 1 06:26:40 extract A",
                        "1 06:26:40 - 1 06:31:40 transfer A 1000.000 L",
                        "1 07:55:00 - 1 07:58:00 clean A");
        assertThat(plan.planter("S1"))
                .containsExactly("1 06:26:40 - 1 06:31:40 fill A", "1 06:31:40 - 1 07:55:00 plant A 5.000 ha");
        assertThat(plan.plan().totals().waitMin()).isZero();
        assertThat(plan.plan().totals().driveKm()).isEqualTo(3); // 1 + 2 of the rig, none twice
    }

    @Test
    void itDrivesFromFieldToFieldOutOfOneLoadAndTheRigIsWhereItEnds() {
        // 1,000 L are drawn in 200 s: in A at 06:08:20, ready to spray at 06:28:20; 2 ha until 07:01:40, in B at
        // 07:13:20
        // (600 s + 100 s), 3 ha until 08:03:20; then R1 is in B, drives to the well, draws, and makes a batch in C
        WorkedPlan plan = sprayed("A", 2)
                .rig("R1", rig -> rig.nurseTank(1000))
                .field("B", 3, field -> field.sprayed())
                .field("C", 5, field -> field.sprayed())
                .plan("", "A B C");

        assertThat(plan.planter("S1"))
                .containsExactly(
                        "1 06:23:20 - 1 06:28:20 fill A",
                        "1 06:28:20 - 1 07:01:40 plant A 2.000 ha",
                        "1 07:01:40 - 1 07:13:20 move A to B",
                        "1 07:13:20 - 1 08:03:20 plant B 3.000 ha",
                        "1 08:31:20 - 1 08:36:20 fill C",
                        "1 08:36:20 - 1 09:59:40 plant C 5.000 ha");
        assertThat(plan.rig("R1").subList(4, 10))
                .containsExactly(
                        "1 06:23:20 - 1 06:28:20 transfer A 1000.000 L",
                        "1 08:03:20 - 1 08:06:20 clean B",
                        "1 08:06:20 - 1 08:09:40 move B to well",
                        "1 08:09:40 - 1 08:13:00 draw well 1000.000 L",
                        "1 08:13:00 - 1 08:16:20 move well to C",
                        "1 08:16:20 - 1 08:31:20 extract C");
    }

    @Test
    void aPlanterThatTheRigServesTooWaitsUntilItHasSprayed() {
        // S1 asks first, at 06:00:00, and is done at 07:55:00, the clean at 07:58:00; R1 is in F at 07:59:40, its batch
        // at 08:14:40
        WorkedPlan plan = sprayed("A", 5).field("F", 5).plan("F", "A");

        assertThat(plan.planter("P1", "fill")).containsExactly("1 08:14:40 - 1 08:28:00 fill F");
        assertThat(plan.planter("P1", "wait")).containsExactly("1 07:20:00 - 1 08:14:40 wait F rig");
    }

    @Test
    void noOtherRigFillsIt() {
        WorkedPlan plan = sprayed("A", 20).rig("R2", rig -> rig.nurseTank(9000)).plan("", "A");

        assertThat(plan.plan().loads()).isNotEmpty().allMatch(load -> load.rig().equals("R1"));
    }

    @Test
    void itsSetUpAndCloseUpLieAroundTheSprayingToo() {
        WorkedPlan plan =
                sprayed("A", 5).rig("R1", rig -> rig.setUp(600).closeUp(900)).plan("", "A");

        assertThat(plan.rig("R1", "setUp", "clean", "closeUp"))
                .containsExactly(
                        "1 06:00:00 - 1 06:10:00 setUp yard",
                        "1 08:05:00 - 1 08:08:00 clean A",
                        "1 08:08:00 - 1 08:23:00 closeUp A");
    }

    @Test
    void aRigThatIsMidwayThroughAFieldGoesOnSprayingAfterAReplan() {
        // at 07:05:00 2 of 5 ha are sprayed; 3 ha are in the tank, and R1 is where S1 is
        WorkedPlan plan = sprayed("A", 5).field("F", 5).plan("F", "A");
        LocalDateTime now = WorkedSeason.day(1).atTime(7, 5);
        PlanStart start = StandingAt.of(plan.season(), plan.plan(), now);
        Season left = start.remaining(plan.season());
        Plan rest = PlanRecorder.record(
                CompiledSeason.of(left),
                List.of(List.of("F"), List.of("A")),
                plan.plan().season(),
                start);
        WorkedPlan replanned = new WorkedPlan(plan.season(), rest);

        Standing.OfRig rig = start.standing().rigs().get("R1");
        assertThat(rig.at()).isEqualTo("A");
        assertThat(rig.cleanDue()).isTrue();
        assertThat(start.standing().planters().get("S1").at()).isEqualTo("A");
        assertThat(replanned.planter("S1")).containsExactly("1 07:05:00 - 1 07:55:00 plant A 3.000 ha");
        assertThat(replanned.rig("R1").get(0)).isEqualTo("1 07:55:00 - 1 07:56:40 move A to F");
        assertThat(Audit.check(left, rest)).isEmpty();
    }

    @Test
    void theAuditCatchesARigThatCleansWhileItSprays() {
        WorkedPlan plan = sprayed("A", 5).plan("", "A");
        LocalDateTime early = WorkedSeason.day(1).atTime(7, 0);

        assertThat(Audit.check(
                        plan.season(),
                        with(
                                plan.plan(),
                                activity -> activity instanceof Activity.Clean clean
                                        ? new Activity.Clean(early, early.plusMinutes(3), clean.at())
                                        : activity)))
                .extracting(Finding::rule)
                .containsExactly(Rule.MOUNTED);
    }

    @Test
    void theAuditCatchesARigThatIsElsewhereThanItsSprayer() {
        WorkedPlan plan = sprayed("A", 5).plan("", "A");

        assertThat(Audit.check(
                        plan.season(),
                        with(
                                plan.plan(),
                                activity -> activity instanceof Activity.Clean clean
                                        ? new Activity.Clean(clean.start(), clean.end(), "well")
                                        : activity)))
                .extracting(Finding::rule)
                .containsExactly(Rule.MOUNTED);
    }

    @Test
    void theAuditCatchesALoadOfAnotherRig() {
        WorkedPlan plan = sprayed("A", 5).plan("", "A");
        Season other = plan.season()
                .change()
                .applicators(List.of(
                        plan.season().applicators().get(0),
                        plan.season()
                                .sprayers()
                                .get(0)
                                .change()
                                .on(Optional.of("R2"))
                                .sprayer()))
                .rigs(List.of(
                        plan.season().rigs().get(0),
                        plan.season().rigs().get(0).change().id("R2").rig()))
                .season();

        assertThat(Audit.check(other, plan.plan())).extracting(Finding::rule).contains(Rule.MOUNTED);
    }

    private static Plan with(Plan plan, UnaryOperator<Activity> change) {
        List<Activity> changed = new ArrayList<>();
        plan.rigs().get("R1").activities().forEach(activity -> changed.add(change.apply(activity)));
        changed.sort(Comparator.comparing(Activity::start));
        Map<String, Plan.RigPlan> rigs = new LinkedHashMap<>(plan.rigs());
        Plan.RigPlan its = plan.rigs().get("R1");
        rigs.put("R1", new Plan.RigPlan(its.nurseTankL(), its.payloadKg(), its.bucketKg(), changed));
        return new Plan(
                plan.season(),
                plan.score(),
                plan.totals(),
                plan.planters(),
                rigs,
                plan.loads(),
                plan.batches(),
                plan.unserved(),
                plan.bounds(),
                plan.limits());
    }

    private static WorkedSeason sprayed(String field, double areaHa) {
        return new WorkedSeason()
                .field(field, areaHa, choice -> choice.sprayed())
                .mounted("S1");
    }
}

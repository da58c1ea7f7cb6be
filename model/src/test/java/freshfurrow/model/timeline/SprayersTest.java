package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.audit.Audit;
import freshfurrow.model.audit.Finding;
import freshfurrow.model.audit.Rule;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Sprayer;
import freshfurrow.model.season.Work;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A sprayer that rigs fill: S1 is like planter P1, and is filled at A from 07:20:00 to 07:33:20. */
class SprayersTest {
    @Test
    void aSprayerSpraysOutOfALoadAsAPlanterPlants() {
        WorkedPlan plan = sprayed(5).sprayer("S1", sprayer -> sprayer).plan("A");

        assertThat(plan.planter("S1"))
                .containsExactly(
                        "1 07:00:00 - 1 07:20:00 move yard to A",
                        "1 07:20:00 - 1 07:33:20 fill A", // 300 s + 1000 L / 2 L/s
                        "1 07:33:20 - 1 08:56:40 plant A 5.000 ha"); // 50,000 m2 / 10 m2/s
        assertThat(plan.plan().planters().get("S1").work()).isEqualTo(Work.SPRAY);
    }

    @Test
    void aHoseCoversWhatItsRateSays() {
        // 5 ha at 5 m2/s take 10,000 s = 2:46:40
        assertThat(sprayed(5)
                        .sprayer("S1", sprayer -> sprayer.hose(5))
                        .plan("A")
                        .planter("S1", "plant"))
                .containsExactly("1 07:33:20 - 1 10:20:00 plant A 5.000 ha");
    }

    @Test
    void sprayingStopsWhereItsHoursDoAndTheLoadIsNoLargerThanWhatTheyLeave() {
        // to 08:20:00: x ha take 300 s + 100 s x and 1,000 s x, from 07:20:00 on: 3,600 s leave 3 ha, within a 256th of
        // a tank
        WorkedPlan plan = sprayed(5)
                .sprayer("S1", sprayer -> sprayer.sprayHours("07:00/08:20"))
                .plan("A");

        assertThat(plan.planter("S1", "fill", "plant", "wait"))
                .containsExactly(
                        "1 07:20:00 - 1 07:30:00 fill A",
                        "1 07:30:00 - 1 08:19:56 plant A 2.995 ha",
                        "2 07:00:00 - 2 07:08:21 fill A",
                        "2 07:08:21 - 2 07:41:46 plant A 2.005 ha");
        assertThat(plan.plan().totals().waitMin()).isZero();
    }

    @Test
    void itMayDriveAndBeFilledOutsideItsSprayHours() {
        // S1 could be filled from 07:20:00 on, but asks for when it may spray: 10:00:00
        assertThat(sprayed(5)
                        .sprayer("S1", sprayer -> sprayer.sprayHours("10:00/12:00"))
                        .plan("A")
                        .planter("S1"))
                .containsExactly(
                        "1 07:00:00 - 1 07:20:00 move yard to A",
                        "1 07:20:00 - 1 10:00:00 wait A spray_hours",
                        "1 10:00:00 - 1 10:13:20 fill A",
                        "1 10:13:20 - 1 11:36:40 plant A 5.000 ha");
    }

    @Test
    void noPlanterSpraysAndNoSprayerPlants() {
        WorkedPlan plan = new WorkedSeason()
                .field("A", 5)
                .sprayer("S1", sprayer -> sprayer)
                .forbiddenPlan("A");

        assertThat(plan.plan().score().hard()).isEqualTo(-1);
        assertThat(Audit.check(plan.season(), plan.plan()))
                .extracting(Finding::rule)
                .contains(Rule.ALLOWED_PLANTER);
    }

    @Test
    void theAuditKnowsWhenSprayingIsAllowed() {
        WorkedPlan plan = sprayed(5).sprayer("S1", sprayer -> sprayer).plan("A");

        assertThat(Audit.check(spraying(plan.season(), "07:00/08:56:39"), plan.plan()))
                .extracting(Finding::rule)
                .containsExactly(Rule.SPRAY_HOURS);
        assertThat(Audit.check(spraying(plan.season(), "07:33:20/08:56:40"), plan.plan()))
                .isEmpty();
    }

    private static Season spraying(Season season, String hours) {
        Sprayer s1 = season.sprayers().get(0);
        return season.change()
                .applicators(List.of(
                        s1.change().sprayHours(WorkedSeason.hours(hours)).sprayer()))
                .season();
    }

    private static WorkedSeason sprayed(double areaHa) {
        return new WorkedSeason().field("A", areaHa, field -> field.sprayed());
    }
}

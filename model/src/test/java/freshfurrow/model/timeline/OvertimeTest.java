package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.audit.Audit;
import freshfurrow.model.audit.Finding;
import freshfurrow.model.audit.Rule;
import freshfurrow.model.plan.PlanFile;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A tank is 5 ha. It is filled from 07:20:00 to 07:33:20 and, at 10 m2 a second, planted until 08:56:40: 400 s after 08:50:00.
 * By 08:50:00 x ha are planted where 300 + 100 x + 1,000 x s come to 5,400: 4.636, less what the search for it leaves.
 */
class OvertimeTest {
    @Test
    void plantingGoesOnWhereThatFinishesTheField() {
        WorkedPlan plan = until("07:00/08:50", 400).field("A", 5).plan("A");

        assertThat(plan.planter("P1", "plant")).containsExactly("1 07:33:20 - 1 08:56:40 plant A 5.000 ha");
    }

    @Test
    void plantingGoesOnWhereThatUsesUpTheLoad() {
        WorkedPlan plan = until("07:00/08:50", 400).field("A", 9).plan("A");

        assertThat(plan.planter("P1", "plant")).first().isEqualTo("1 07:33:20 - 1 08:56:40 plant A 5.000 ha");
    }

    @Test
    void nothingIsPlantedPastTheHoursThatWouldNotBeFinishedInTheOvertime() {
        WorkedPlan plan = until("07:00/08:50", 300).field("A", 5).plan("A");

        assertThat(plan.planter("P1", "plant")).first().isEqualTo("1 07:32:44 - 1 08:49:56 plant A 4.631 ha");
    }

    @Test
    void aMinuteOfItCountsAsItsGoalSays() {
        // 1 fill, 1 trip, the same drives: 400 s are 6.67 min, weighed 2
        WorkedPlan overtime = until("07:00/08:50", 400).field("A", 5).plan("A");
        WorkedPlan longerDay = until("07:00/09:00", 0).field("A", 5).plan("A");

        assertThat(overtime.plan().totals().overtimeMin()).isEqualTo(6.7);
        assertThat(overtime.plan().score().soft())
                .isBetween(
                        longerDay.plan().score().soft() - 14,
                        longerDay.plan().score().soft() - 13);
    }

    @Test
    void aBreakIsNoEndOfTheDay() {
        WorkedSeason season = new WorkedSeason().planter("P1", planter -> planter.hours("07:00/08:50", "09:00/20:00")
                .overtime(400));

        assertThat(season.field("A", 5).plan("A").planter("P1", "plant"))
                .containsExactly(
                        "1 07:33:20 - 1 08:50:00 plant A 4.600 ha", "1 09:00:00 - 1 09:06:40 plant A 0.400 ha");
    }

    @Test
    void rainEndsIt() {
        WorkedPlan plan = until("07:00/08:50", 3600)
                .days(4)
                .rain(1, "08:53:20", 10)
                .field("A", 5)
                .plan("A");

        assertThat(plan.planter("P1", "plant")).first().isEqualTo("1 07:32:44 - 1 08:49:56 plant A 4.631 ha");
    }

    @Test
    void hoursOverMidnightEndInTheMorning() {
        // 1,600 s until the first batch is done, 800 s for the fill, 5,000 s of planting
        WorkedSeason season = new WorkedSeason()
                .days(3)
                .rig("R1", rig -> rig.hours("00:00/24:00"))
                .planter("P1", planter -> planter.hours("00:00/02:00", "20:00/24:00")
                        .overtime(400));

        assertThat(season.field("A", 5).plan("A").planter("P1", "plant"))
                .containsExactly("1 00:40:00 - 1 02:03:20 plant A 5.000 ha");
    }

    @Test
    void aPlanMadeAnewInItGoesOnWithIt() {
        // at 08:53:20 200 s are left: 0.2 ha
        WorkedPlan rest = UnderWay.at(until("07:00/08:50", 400).field("A", 5).plan("A"), "08:53:20")
                .goOn();

        assertThat(rest.planter("P1", "plant")).containsExactly("1 08:53:20 - 1 08:56:40 plant A 0.200 ha");
    }

    @Test
    void theAuditRefusesPlantingPastTheHoursThatFinishesNothing(@TempDir Path folder) throws Exception {
        WorkedPlan plan = until("07:00/08:50", 400).field("A", 5).plan("A");
        String whole = "\"start\": \"2027-04-19T07:33:20\", \"end\": \"2027-04-19T08:56:40\"";
        String text = PlanFile.toJson(plan.plan());
        String piece = text.lines()
                .filter(line -> line.contains(whole))
                .findFirst()
                .orElseThrow()
                .replaceFirst(",$", "");
        String cut = piece.replace("08:56:40", "08:53:20").replace("\"areaHa\": 5", "\"areaHa\": 4.8") + ",\n"
                + piece.replace("19T07:33:20", "20T07:00:00")
                        .replace("19T08:56:40", "20T07:03:20")
                        .replace("\"areaHa\": 5", "\"areaHa\": 0.2");
        Path file = Files.writeString(folder.resolve("plan.json"), text.replace(piece, cut));

        assertThat(Audit.check(plan.season(), PlanFile.readToAudit(file)))
                .extracting(Finding::rule)
                .contains(Rule.OVERTIME)
                .doesNotContain(Rule.WORK_HOURS);
    }

    private static WorkedSeason until(String hours, int overtimeS) {
        return new WorkedSeason().planter("P1", planter -> planter.hours(hours).overtime(overtimeS));
    }
}

package freshfurrow.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.example.ExampleLog;
import freshfurrow.cli.example.ExamplePlan;
import freshfurrow.cli.example.ExampleSeason;
import freshfurrow.model.log.Fact;
import freshfurrow.model.plan.Plan;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class TraceTextTest {
    private final ExampleLog log = new ExampleLog();

    @Test
    void aFieldIsFollowedBackToItsLotsWithAgesAtUse() {
        log.batch("07:00", 10, 6, "A").batch("07:20", 8, 1, "A").planted("09:16", "N40", 6, "A");
        log.planted("09:40", "S80", 1, "A");

        assertThat(record(trace(Optional.empty()).field("N40")))
                .containsExactly(
                        "Field N40: 6.00 ha of 8.00 ha planted, 2.00 ha left.",
                        "Season example, crop corn, recipe standard: hold time 5 h 00 min from the end of extraction.",
                        "",
                        "Tue 2027-04-20 09:16  planted N40, 6.00 ha, from load A (entry 3)",
                        "  load A: used up to 2 h 16 min after its oldest batch (hold time of standard 5 h 00 min)",
                        "  Tue 2027-04-20 07:00  batch by R1, 10 kg of windrow and 6 kg of bought, for load A (entry 1);"
                                + " 2 h 16 min old at its last use",
                        "  Tue 2027-04-20 07:20  batch by R1, 8 kg of windrow and 1 kg of bought, for load A (entry 2);"
                                + " 1 h 56 min old at its last use",
                        "  load A also went to S80");
    }

    @Test
    void whatOnlyThePlanSaysIsCalledPlanned() {
        log.planted("09:30", "N40", 8, "L0001");

        assertThat(record(trace(Optional.of(ExamplePlan.plan())).field("N40")).subList(3, 6))
                .containsExactly(
                        "Tue 2027-04-20 09:30  planted N40, 8.00 ha, from load L0001 (entry 1)",
                        "  planned, not logged: by P1",
                        "  planned, not logged: batch B0001 by R1, end Tue 2027-04-20 07:00, 10 kg of windrow and 6 kg of bought;"
                                + " if made as planned, 2 h 30 min old at its last use");
    }

    @Test
    void aLoadThatWasPlantedEarlierThanPlannedHasNoAge() {
        // The plan ends batch B0002 of L0002 on Wednesday at 07:08.
        log.planted("09:30", "S80", 4, "L0002");

        assertThat(trace(Optional.of(ExamplePlan.plan())).field("S80"))
                .contains("  planned, not logged: batch B0002 by R1, end Wed 2027-04-21 07:08, 8 kg of bought;"
                        + " planned to end after the logged planting");
    }

    @Test
    void whatNobodyKnowsIsSaidToBeUnknown() {
        log.planted("09:30", "N40", 2, "").planted("10:30", "N40", 2, "B");

        assertThat(record(trace(Optional.of(ExamplePlan.plan())).field("N40")).subList(3, 7))
                .containsExactly(
                        "Tue 2027-04-20 09:30  planted N40, 2.00 ha (entry 1)",
                        "  its load was not logged",
                        "Tue 2027-04-20 10:30  planted N40, 2.00 ha, from load B (entry 2)",
                        "  no batch of load B is logged, and no plan has it");
        assertThat(trace(Optional.empty()).field("E20")).contains("No planting of it is logged.");
    }

    @Test
    void aLotIsFollowedToItsFields() {
        log.add("06:00", new Fact.CompostDelivered("windrow", 4))
                .batch("07:00", 10, 6, "A", "B")
                .planted("09:00", "N40", 5, "A")
                .planted("09:30", "E20", 1, "L0001");

        assertThat(record(trace(Optional.of(ExamplePlan.plan())).lot("windrow")))
                .containsExactly(
                        "Compost lot windrow: 10 kg used, 14 kg of 24 kg left.",
                        "Season example: its file has 20 kg from 2027-03-20.",
                        "",
                        "Tue 2027-04-20 06:00  delivered, 4 kg of windrow (entry 1)",
                        "Tue 2027-04-20 07:00  batch by R1, 10 kg of windrow and 6 kg of bought, for loads A, B (entry 2)",
                        "  Tue 2027-04-20 09:00  planted N40, 5.00 ha, from load A (entry 3); the batch was 2 h 00 min old",
                        "  no planting from load B is logged",
                        "planned, not logged: batch B0001 by R1, end Tue 2027-04-20 07:00, 10 kg of windrow and 6 kg of bought,"
                                + " for load L0001",
                        "  Tue 2027-04-20 09:30  planted E20, 1.00 ha, from load L0001 (entry 4)");
    }

    @Test
    void whatIsVoidedIsInNoTrace() {
        log.batch("07:00", 10, 6, "A").add("08:00", new Fact.Voided(1), "wrong drum");

        assertThat(record(trace(Optional.empty()).lot("bought"))).endsWith("", "Nothing of it is logged.");
    }

    @Test
    void lawAndLicensedAdviceComeBeforeTheRecord() {
        assertThat(String.join(" ", trace(Optional.empty()).field("N40")))
                .contains("21 CFR part 112", "licensed professionals come first", "docs/safety.md");
    }

    /** 21 CFR 112.161(a)(1), but for name and location of the farm: the season's name stands for them. */
    @Test
    void aFieldsTraceHasWhatTheProduceSafetyRuleListsForRecords() {
        log.batch("07:00", 10, 6, "A").planted("09:16", "N40", 6, "A");

        assertThat(String.join("\n", trace(Optional.empty()).field("N40")))
                .as("name")
                .contains("Season example")
                .as("actual values")
                .contains("10 kg of windrow", "6.00 ha", "2 h 16 min old")
                .as("commodity, and lots")
                .contains("crop corn", "windrow", "bought")
                .as("location of the growing area")
                .contains("Field N40")
                .as("date and time of each activity")
                .contains("Tue 2027-04-20 07:00  batch", "Tue 2027-04-20 09:16  planted");
    }

    private TraceText trace(Optional<Plan> plan) {
        return new TraceText(ExampleSeason.season(), log.log(), plan);
    }

    /** What stands before the cautions. */
    private static List<String> record(List<String> lines) {
        return lines.subList(0, lines.size() - 4);
    }
}

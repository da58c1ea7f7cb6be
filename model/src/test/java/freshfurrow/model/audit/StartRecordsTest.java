package freshfurrow.model.audit;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanFile;
import freshfurrow.model.season.Season;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.EnumSet;
import java.util.Set;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A plan of the first season as it is left on 22 April 2027 at 10:30, with a load in the tank and a machine down. */
class StartRecordsTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final ValidPlan UNDER_WAY =
            ValidPlan.ofScenario("first-season").replanned(LocalDateTime.parse("2027-04-22T10:30"));

    @TempDir
    private Path folder;

    @Test
    void whatWasDoneBeforeFitsThePlanAsItIs() throws Exception {
        assertThat(rulesBrokenIf(plan -> {})).isEmpty();
    }

    @Test
    void whatIsPlantedBeforeTheSeasonOrLaterThanThePlanBeginsIsCaught() throws Exception {
        assertThat(rulesBrokenIf(plan -> object(plan, "/start/planted/0").put("date", "2100-04-20")))
                .containsOnly(Rule.DONE_BEFORE);
        assertThat(rulesBrokenIf(plan -> object(plan, "/start/planted/0").put("date", "2000-04-20")))
                .containsOnly(Rule.DONE_BEFORE);
    }

    @Test
    void aMachineThatIsFreeBeforeThePlanBeginsIsCaught() throws Exception {
        assertThat(rulesBrokenIf(plan -> object(plan, "/start/rigs/R1").put("freeFrom", "2027-04-22T10:29:59")))
                .contains(Rule.DONE_BEFORE);
    }

    @Test
    void aMachineOfWhichItIsNotSaidWhereItStandsIsCaught() throws Exception {
        assertThat(rulesBrokenIf(plan -> object(plan, "/start/rigs").remove("R1")))
                .contains(Rule.START);
    }

    @Test
    void anOutageOfAMachineThatIsNotThereIsCaught() throws Exception {
        assertThat(rulesBrokenIf(plan -> object(plan, "/start/outages/0").put("machine", "R9")))
                .contains(Rule.KNOWN_NAMES);
    }

    @Test
    void aBatchMadeBeforeWithoutLotsOrInAnotherYearIsCaught() throws Exception {
        assertThat(rulesBrokenIf(plan -> {
                    object(plan, "/start/batches/0").putObject("lots");
                    object(plan, "/batches/0").putObject("lots");
                }))
                .containsOnly(Rule.CARRIED_BATCHES);
        assertThat(rulesBrokenIf(plan -> object(plan, "/batches/0").put("start", "2100-04-22T08:00:00")))
                .contains(Rule.CARRIED_BATCHES);
    }

    @Test
    void figuresOfABatchMadeBeforeThatAreToldTwoWaysAreCaught() throws Exception {
        assertThat(rulesBrokenIf(plan -> object(plan, "/start/batches/0").put("waterL", 1)))
                .containsOnly(Rule.CARRIED_BATCHES);
        assertThat(rulesBrokenIf(plan -> object(plan, "/batches/0").put("compostKg", 1)))
                .contains(Rule.CARRIED_BATCHES);
    }

    @Test
    void aDeadlineOfMixOnBoardThatIsNotThatOfItsOldestBatchIsCaught() throws Exception {
        assertThat(rulesBrokenIf(
                        plan -> object(plan, "/start/planters/P1/tank/mix").put("deadline", "2027-04-22T23:00:00")))
                .contains(Rule.CARRIED_MIX);
    }

    @Test
    void aBatchLeftOutOfMixOnBoardIsCaught() throws Exception {
        assertThat(rulesBrokenIf(plan -> ((ArrayNode) plan.at("/start/planters/P1/tank/mix/batches")).remove(0)))
                .contains(Rule.CARRIED_MIX);
    }

    @Test
    void numbersThatDoNotGoOnFromThoseMadeBeforeAreCaught() throws Exception {
        assertThat(rulesBrokenIf(plan -> object(plan, "/start").put("loadsMade", 0)))
                .containsOnly(Rule.NUMBERS);
        assertThat(rulesBrokenIf(plan -> object(plan, "/start").put("batchesMade", 0)))
                .containsOnly(Rule.NUMBERS);
    }

    @Test
    void groundThatIsJudgedAfterThePlanBeginsIsCaught() throws Exception {
        assertThat(rulesBrokenIf(plan -> judged(plan, "2027-04-20T10:00:00"))).isEmpty();
        assertThat(rulesBrokenIf(plan -> judged(plan, "2027-04-30T10:00:00"))).containsOnly(Rule.DONE_BEFORE);
    }

    private static void judged(JsonNode plan, String said) {
        object(plan, "/start")
                .putArray("judged")
                .addObject()
                .put("field", UNDER_WAY.whole().fields().get(0).id())
                .put("said", said)
                .put("fitFrom", said);
    }

    private Set<Rule> rulesBrokenIf(Consumer<JsonNode> change) throws Exception {
        JsonNode tree = JSON.readTree(PlanFile.toJson(UNDER_WAY.plan()));
        // a start of before there was a checksum: otherwise each change would be refused for that
        ((ObjectNode) tree.get("start")).remove("sha256");
        change.accept(tree);
        Plan plan = PlanFile.readToAudit(Files.writeString(folder.resolve("plan.json"), tree.toString()));
        Season left = plan.start().orElseThrow().remaining(UNDER_WAY.whole());
        Set<Rule> rules = EnumSet.noneOf(Rule.class);
        Audit.check(left, plan).forEach(finding -> rules.add(finding.rule()));
        return rules;
    }

    private static ObjectNode object(JsonNode plan, String at) {
        return (ObjectNode) plan.at(at);
    }
}

package freshfurrow.model.audit;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.plan.PlanFile;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.DaySpan;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.RigChange;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WorkHours;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The worked day, of which the rig fetches the compost in the yard: 32 kg in 480 s. It holds 35 kg; with 4,000 L of water and 100 kg empty its
 * vehicle carries 4,132 kg of 4,200 kg.
 */
class FetchedCompostTest {
    private static final String FETCHED = WorkedDay.PLAN_AT_THE_FIELD
            .replace("\"soft\": -94", "\"soft\": -114")
            .replace("\"waterTrips\": 1, \"batches\"", "\"waterTrips\": 1, \"compostTrips\": 1, \"batches\"")
            .replace(
                    "\"rigs\": {\"R1\": {\"activities\": [",
                    "\"rigs\": {\"R1\": {\"activities\": [{\"kind\": \"loadCompost\", \"start\": \"2027-04-20T05:50:00\","
                            + " \"end\": \"2027-04-20T05:58:00\", \"at\": \"yard\", \"lot\": \"windrow\", \"kg\": 32},");

    @TempDir
    private Path folder = Path.of("");

    @Test
    void aPlanWithCompostThatIsFetchedHolds() throws Exception {
        assertThat(Audit.check(season(), PlanFile.readToAudit(written(FETCHED))))
                .isEmpty();
    }

    @ParameterizedTest(name = "{0}: {1} -> {2}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "COMPOST_ON_BOARD | \"kg\": 32 | \"kg\": 31.99",
                "LOADING_TIME | \"end\": \"2027-04-20T05:58:00\" | \"end\": \"2027-04-20T05:57:59\"",
                "TOTALS | \"compostTrips\": 1 | \"compostTrips\": 2",
                "SCORE | \"soft\": -114 | \"soft\": -94",
            })
    void aPlanThatBreaksARuleIsCaughtByThatRuleAlone(Rule rule, String right, String wrong) throws Exception {
        assertThat(FETCHED).containsOnlyOnce(right);
        assertThat(rulesBroken(season(), FETCHED.replace(right, wrong))).containsOnly(rule);
    }

    @Test
    void compostLoadedElsewhereThanItsLotLiesIsCaught() throws Exception {
        assertThat(rulesBroken(lots(lot -> lot.withAt(Optional.of("well"))), FETCHED))
                .containsOnly(Rule.LOADING_PLACE);
    }

    @Test
    void compostLoadedWhereNobodySaysThatItLiesIsCaught() throws Exception {
        assertThat(rulesBroken(lots(lot -> lot.withAt(Optional.empty())), FETCHED))
                .containsOnly(Rule.LOADING_PLACE);
    }

    @Test
    void moreCompostOnBoardThanTheRigHoldsIsCaught() throws Exception {
        assertThat(rulesBroken(rig(rig -> rig.compostLoad(OptionalDouble.of(31.99))), FETCHED))
                .containsOnly(Rule.COMPOST_LOAD);
    }

    @Test
    void moreOnTheVehicleThanItsPayloadIsCaught() throws Exception {
        assertThat(rulesBroken(rig(rig -> rig.payloadKg(OptionalDouble.of(4_131.9))), FETCHED))
                .containsOnly(Rule.PAYLOAD);
    }

    @Test
    void aLotThatIsLoadedFromBeforeItIsThereIsCaught() throws Exception {
        assertThat(rulesBroken(lots(lot -> lot.withFrom(LocalDate.of(2027, 4, 21))), FETCHED))
                .containsOnly(Rule.LOT_DATE);
    }

    @Test
    void moreLoadedThanALotHasIsCaught() throws Exception {
        assertThat(rulesBroken(lots(lot -> lot.withMassKg(31.99)), FETCHED)).containsOnly(Rule.LOT_STOCK);
    }

    @Test
    void aLaterLotThatIsLoadedFromWhileAnEarlierOneIsLeftIsCaught() throws Exception {
        assertThat(rulesBroken(
                        lots(lot -> lot.withFrom(LocalDate.of(2027, lot.id().equals("windrow") ? 4 : 3, 2))), FETCHED))
                .containsOnly(Rule.LOT_ORDER);
    }

    @Test
    void aLotThatDoesNotExistIsCaught() throws Exception {
        assertThat(rulesBroken(season(), FETCHED.replace("\"windrow\"", "\"heap\"")))
                .containsOnly(Rule.KNOWN_NAMES);
    }

    private static Season season() {
        return rig(rig -> rig);
    }

    private static Season rig(UnaryOperator<RigChange> change) {
        Season day = WorkedDay.season(setup -> {});
        Rig rig = change.apply(day.rigs()
                        .get(0)
                        .change()
                        .hours(new WorkHours(List.of(new DaySpan(5 * 3600, 20 * 3600))))
                        .payloadKg(OptionalDouble.of(4_200))
                        .emptyWeightKg(OptionalDouble.of(100))
                        .compostLoad(OptionalDouble.of(35))
                        .compostLoadingMinPerKg(0.25))
                .rig();
        return day.change()
                .rigs(List.of(rig))
                .compost(day.compost().stream()
                        .map(lot -> lot.withAt(Optional.of("yard")))
                        .toList())
                .season();
    }

    private static Season lots(UnaryOperator<CompostLot> change) {
        Season season = season();
        return season.change()
                .compost(season.compost().stream().map(change).toList())
                .season();
    }

    private Set<Rule> rulesBroken(Season season, String text) throws Exception {
        Set<Rule> rules = EnumSet.noneOf(Rule.class);
        Audit.check(season, PlanFile.readToAudit(written(text))).forEach(finding -> rules.add(finding.rule()));
        return rules;
    }

    private Path written(String text) throws Exception {
        return Files.writeString(folder.resolve("plan.json"), text);
    }
}

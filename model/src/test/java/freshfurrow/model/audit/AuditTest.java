package freshfurrow.model.audit;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanFile;
import freshfurrow.model.plan.WaitReason;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.Fixed;
import freshfurrow.model.season.GroundRecord;
import freshfurrow.model.season.Outage;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Standing;
import freshfurrow.model.season.WetDay;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AuditTest {
    @TempDir
    private Path folder;

    @Test
    void aPlanWorkedByHandHolds() throws Exception {
        assertThat(Audit.check(WorkedDay.season(day -> {}), plan(WorkedDay.PLAN_AT_THE_FIELD)))
                .isEmpty();
    }

    @Test
    void aPlanWithMixMadeAtTheWaterForTwoLoadsHolds() throws Exception {
        assertThat(Audit.check(WorkedDay.atTheWater(), plan(WorkedDay.PLAN_AT_THE_WATER)))
                .isEmpty();
    }

    /** In each row one thing of the plan is wrong. */
    @ParameterizedTest(name = "{0}: {1} -> {2}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                // what the plan refers to
                "SEASON | \"Worked day\" | \"Another day\"",
                "SEASON | \"tankL\": 2000 | \"tankL\": 2500",
                "SEASON | \"rigs\": {\"R1\" | \"rigs\": {\"R2\"",
                "SEASON | \"rigs\": {\"R1\": { | \"rigs\": {\"R1\": {\"nurseTankL\": 4100, ",
                "SEASON | \"rigs\": {\"R1\": { | \"rigs\": {\"R1\": {\"payloadKg\": 4000, ",
                "SEASON | \"rigs\": {\"R1\": { | \"rigs\": {\"R1\": {\"bucketKg\": 14, ",
                "SEASON | \"distance\": \"km\"} | \"distance\": \"km\"}, \"names\": {\"A\": \"Acre\"}",
                "SEASON | \"distance\": \"km\"} | \"distance\": \"km\"}, \"names\": {\"Z\": \"Zero\"}",
                "SEASON | \"distance\": \"km\"} | \"distance\": \"km\"}, \"fixed\": [\"A\"]",
                "KNOWN_NAMES | \"rigs\": {\"R1\" | \"rigs\": {\"R2\"",
                "KNOWN_NAMES | \"fields\": [\"A\", \"B\"] | \"fields\": [\"A\", \"B\", \"Z\"]",
                "KNOWN_NAMES | \"from\": \"yard\", \"to\": \"A\" | \"from\": \"yard\", \"to\": \"Z\"",
                "KNOWN_NAMES | \"at\": \"well\", \"litres\" | \"at\": \"spring\", \"litres\"",
                "KNOWN_NAMES | 10:32:00\", \"at\": \"A\", \"load\": \"L2\"} | 10:32:00\", \"at\": \"A\", \"load\": \"L9\"}",
                "KNOWN_NAMES | \"at\": \"A\", \"batch\": \"B3\" | \"at\": \"A\", \"batch\": \"B9\"",
                "KNOWN_NAMES | \"lots\": {\"windrow\": 12} | \"lots\": {\"heap\": 12}",
                "KNOWN_NAMES | \"recipe\": \"standard\", \"litres\": 1200 | \"recipe\": \"weak\", \"litres\": 1200",
                "KNOWN_NAMES | \"unserved\": [] | \"unserved\": [{\"field\": \"Z\", \"areaHa\": 1, \"why\": \"lost\"}]",
                "UNIQUE_NAMES | {\"id\": \"L2\" | {\"id\": \"L1\"",
                "UNIQUE_NAMES | {\"id\": \"B3\" | {\"id\": \"B2\"",
                "UNIQUE_NAMES | \"fields\": [\"A\", \"B\"] | \"fields\": [\"A\", \"B\", \"A\"]",
                "COMPLETE_RECORDS | 07:33:20\", \"at\": \"A\", \"load\": \"L1\"} | 07:33:20\", \"at\": \"A\", \"load\": \"L2\"}",
                "COMPLETE_RECORDS | \"litres\": 2000, \"batches\": [\"B1\", \"B2\"] | \"litres\": 2000, \"batches\": [\"B1\"]",
                "COMPLETE_RECORDS | \"litres\": 1200, \"batches\": [\"B3\"] | \"litres\": 1200, \"batches\": []",
                "COMPLETE_RECORDS | \"L2\", \"planter\": \"P1\" | \"L2\", \"planter\": \"P2\"",
                "COMPLETE_RECORDS | \"B3\", \"rig\": \"R1\" | \"B3\", \"rig\": \"R2\"",
                "FIGURES | \"areaHa\": 4.38 | \"areaHa\": -4.38",
                "FIGURES | \"dumpedL\": 0, \"deadline\": \"2027-04-20T11 | \"dumpedL\": -1, \"deadline\": \"2027-04-20T11",
                "MACHINE_WORK | {\"kind\": \"wait\", | {\"kind\": \"clean\", \"start\": \"2027-04-20T10:20:00\","
                        + " \"end\": \"2027-04-20T10:20:00\", \"at\": \"A\"}, {\"kind\": \"wait\",",
                // what machines do
                "ONE_AT_A_TIME | 10:20:00\", \"end\": \"2027-04-20T10:22:00\" | 10:20:00\", \"end\": \"2027-04-20T10:23:00\"",
                "ONE_AT_A_TIME | 10:20:00\", \"end\": \"2027-04-20T10:22:00\" | 10:20:00\", \"end\": \"2027-04-20T10:19:00\"",
                "ONE_AT_A_TIME | \"draw\", \"start\": \"2027-04-20T06:03:20 | \"draw\", \"start\": \"2027-04-20T06:03:10",
                "SEASON_DAYS | \"move\", \"start\": \"2027-04-20T06:00:00 | \"move\", \"start\": \"2027-04-18T06:00:00",
                "SEASON_DAYS | \"end\": \"2027-04-20T12:57:00 | \"end\": \"2027-05-02T00:00:01",
                "WORK_HOURS | \"move\", \"start\": \"2027-04-20T06:00:00 | \"move\", \"start\": \"2027-04-20T05:59:59",
                "WORK_HOURS | \"plant\", \"start\": \"2027-04-20T12:30:00 | \"plant\", \"start\": \"2027-04-20T12:29:59",
                "PLACE | \"from\": \"yard\", \"to\": \"A\", \"km\": 3 | \"from\": \"well\", \"to\": \"A\", \"km\": 3",
                "PLACE | 07:10:00\", \"at\": \"A\" | 07:10:00\", \"at\": \"B\"",
                "ROAD_DISTANCE | \"to\": \"B\", \"km\": 1.5 | \"to\": \"B\", \"km\": 1.2",
                "ROAD_TIME | \"end\": \"2027-04-20T10:47:00\" | \"end\": \"2027-04-20T10:46:59\"",
                "ROAD_TIME | \"end\": \"2027-04-20T06:26:00\" | \"end\": \"2027-04-20T06:25:59\"",
                // fields
                "FIELD_AREA | \"areaHa\": 1.62 | \"areaHa\": 1.6",
                "FIELD_AREA | \"unserved\": [] | \"unserved\": [{\"field\": \"A\", \"areaHa\": 0.00001, \"why\": \"wet\"}]",
                "UNPLANTED_REASON | \"unserved\": [] | \"unserved\": [{\"field\": \"A\", \"areaHa\": 0, \"why\": \"wet\"}]",
                "UNPLANTED_REASON | \"unserved\": [] | \"unserved\": [{\"field\": \"A\", \"areaHa\": 1, \"why\": \" \"}]",
                "PLANTING_ORDER | \"fields\": [\"A\", \"B\"] | \"fields\": [\"B\", \"A\"]",
                "PLANTING_ORDER | \"fields\": [\"A\", \"B\"] | \"fields\": [\"A\"]",
                "WAIT_REASON | \"why\": \"rig\" | \"why\": \"wet\"",
                "WAIT_REASON | \"why\": \"rig\" | \"why\": \"window\"",
                "FIELD_CAPACITY | 07:33:20\", \"end\": \"2027-04-20T10:20:00\" | 07:33:20\", \"end\": \"2027-04-20T10:19:59\"",
                "FIELD_CAPACITY | \"areaHa\": 1.62} | \"areaHa\": 1.620002}",
                // waits, numbers, mix
                "WAIT_REASON | \"why\": \"rig\" | \"why\": \"hours\"",
                "WAIT_END | \"end\": \"2027-04-20T10:22:00\", \"at\": \"A\", \"why\" | \"end\": \"2027-04-20T10:21:59\", \"at\": \"A\", \"why\"",
                "NUMBERS | {\"id\": \"L2\" | {\"id\": \"L3\"",
                "NUMBERS | {\"id\": \"B3\" | {\"id\": \"B4\"",
                "LOT_ORDER | \"lots\": {\"windrow\": 12} | \"lots\": {\"windrow\": 2, \"delivery\": 10}",
                "SEASON | \"rigs\": {\"R1\": { | \"rigs\": {\"R1\": {\"bucketKg\": 13.607771, ",
                // loads
                "LOAD_ON_BOARD | \"load\": \"L2\", \"areaHa\": 4.38 | \"load\": \"L1\", \"areaHa\": 4.38",
                "RECIPE | \"recipe\": \"standard\", \"litres\": 1200 | \"recipe\": \"strong\", \"litres\": 1200",
                "MIX_RATE | \"appliedL\": 1200, \"dumpedL\": 0 | \"appliedL\": 1190, \"dumpedL\": 10",
                "LOAD_BALANCE | \"appliedL\": 1200, \"dumpedL\": 0 | \"appliedL\": 1200, \"dumpedL\": 0.01",
                "LOAD_BALANCE | \"load\": \"L2\", \"litres\": 1200 | \"load\": \"L2\", \"litres\": 1201",
                "TANK_CAPACITY | \"litres\": 2000, \"batches\" | \"litres\": 2002.01, \"batches\"",
                "FILL_AND_TRANSFER | \"fill\", \"start\": \"2027-04-20T10:22:00 | \"fill\", \"start\": \"2027-04-20T10:22:01",
                "FILL_AND_TRANSFER | 10:32:00\", \"at\": \"A\", \"load\": \"L2\", \"litres\" | 10:32:00\", \"at\": \"B\","
                        + " \"load\": \"L2\", \"litres\"",
                "TRANSFER_TIME | \"transfer\", \"start\": \"2027-04-20T10:22:00 | \"transfer\", \"start\": \"2027-04-20T10:22:01",
                "USE_BY | \"deadline\": \"2027-04-20T11:07:00\" | \"deadline\": \"2027-04-20T11:20:00\"",
                "RESERVE | \"lastDrop\": \"2027-04-20T12:57:00\" | \"lastDrop\": \"2027-04-20T14:00:00\"",
                "RESERVE | \"lastDrop\": \"2027-04-20T12:57:00\" | \"lastDrop\": \"2027-04-20T12:57:00\", \"intoReserve\": true",
                "FRESHNESS | 12:30:00\", \"end\": \"2027-04-20T12:57:00\" | 12:30:00\", \"end\": \"2027-04-20T14:22:01\"",
                "LAST_DROP | \"lastDrop\": \"2027-04-20T10:20:00\" | \"lastDrop\": \"2027-04-20T10:19:00\"",
                "BATCH_BEFORE_LOAD | \"end\": \"2027-04-20T07:20:00\", \"compostKg\" | \"end\": \"2027-04-20T07:20:01\", \"compostKg\"",
                "BATCH_BEFORE_LOAD | \"B3\", \"rig\": \"R1\" | \"B3\", \"rig\": \"R2\"",
                // batches and compost
                "BATCH_COMPOST | \"compostKg\": 12, | \"compostKg\": 16,",
                "BATCH_WATER | \"waterL\": 120 | \"waterL\": 121",
                "BATCH_TIME | \"compostKg\": 12, | \"compostKg\": 12.1,",
                "BATCH_RECORD | \"R1\", \"start\": \"2027-04-20T07:10:00\" | \"R1\", \"start\": \"2027-04-20T07:09:00\"",
                "BATCH_PLACE | \"at\": \"A\", \"batch\": \"B3\" | \"at\": \"B\", \"batch\": \"B3\"",
                "CLEANING | 07:07:00\", \"end\": \"2027-04-20T07:10:00\" | 07:07:00\", \"end\": \"2027-04-20T07:09:59\"",
                "EVEN_BATCHES | 07:07:00\", \"compostKg\": 10, \"waterL\": 100, \"lots\": {\"windrow\": 10} | 07:07:00\", \"compostKg\": 10.003,"
                        + " \"waterL\": 100.03, \"lots\": {\"windrow\": 10.003}",
                "COMPOST_RATE | 07:07:00\", \"compostKg\": 10, \"waterL\": 100, \"lots\": {\"windrow\": 10} | 07:07:00\", \"compostKg\": 9.9,"
                        + " \"waterL\": 99, \"lots\": {\"windrow\": 9.9}",
                "COMPOST_RATE | \"recipe\": \"standard\", \"litres\": 1200 | \"recipe\": \"strong\", \"litres\": 1200",
                "LOT_SUM | \"lots\": {\"windrow\": 12} | \"lots\": {\"windrow\": 10}",
                "LOT_DATE | \"lots\": {\"windrow\": 12} | \"lots\": {\"windrow\": 2, \"delivery\": 10}",
                "LOT_STOCK | \"lots\": {\"windrow\": 12} | \"lots\": {\"windrow\": 20.1}",
                // water
                "WATER_ON_BOARD | \"litres\": 4000 | \"litres\": 3195",
                "NURSE_TANK | \"litres\": 4000 | \"litres\": 4001",
                "DRAW_PLACE | \"at\": \"well\", \"litres\" | \"at\": \"yard\", \"litres\"",
                "DRAW_TIME | 06:03:20\", \"end\": \"2027-04-20T06:21:00\" | 06:03:20\", \"end\": \"2027-04-20T06:20:59\"",
                "DRAW_HOURS | \"draw\", \"start\": \"2027-04-20T06:03:20\" | \"draw\", \"start\": \"2027-04-20T04:59:59\"",
                "HOSES | {\"kind\": \"draw\" | {\"kind\": \"draw\", \"start\": \"2027-04-20T06:20:00\","
                        + " \"end\": \"2027-04-20T06:25:00\", \"at\": \"well\", \"litres\": 1}, {\"kind\": \"draw\"",
                "DAILY_LIMIT | {\"kind\": \"draw\" | {\"kind\": \"draw\", \"start\": \"2027-04-20T19:00:00\","
                        + " \"end\": \"2027-04-20T19:30:00\", \"at\": \"well\", \"litres\": 1001}, {\"kind\": \"draw\"",
                // totals
                "TOTALS | \"areaHa\": 16 | \"areaHa\": 16.1",
                "TOTALS | \"unservedHa\": 0 | \"unservedHa\": 0.1",
                "TOTALS | \"lateHaDays\": 6 | \"lateHaDays\": 12",
                "TOTALS | \"planterFills\": 2 | \"planterFills\": 3",
                "TOTALS | \"waterTrips\": 1 | \"waterTrips\": 0",
                "TOTALS | \"batches\": 3, | \"batches\": 2,",
                "TOTALS | \"compostKg\": 32 | \"compostKg\": 31.9",
                "TOTALS | \"dumpedL\": 0, \"waitMin\" | \"dumpedL\": 1, \"waitMin\"",
                "TOTALS | \"waitMin\": 2 | \"waitMin\": 0",
                "TOTALS | \"driveKm\": 9.5 | \"driveKm\": 9.4",
                "TOTALS | \"smallestMarginMin\": 47 | \"smallestMarginMin\": 85",
                "TOTALS | \"finish\": \"2027-04-20T12:57:00\" | \"finish\": \"2027-04-20T12:00:00\"",
                "SCORE | \"hard\": 0 | \"hard\": -1",
                "SCORE | \"medium\": -1200 | \"medium\": -600",
                "SCORE | \"soft\": -94 | \"soft\": -90",
            })
    void aPlanThatBreaksARuleIsCaughtByThatRule(Rule rule, String right, String wrong) throws Exception {
        assertThat(rulesBroken(WorkedDay.season(day -> {}), edited(WorkedDay.PLAN_AT_THE_FIELD, right, wrong)))
                .contains(rule);
    }

    @ParameterizedTest(name = "{0}: {1} -> {2}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "MIX_BATCHES | \"litres\": 1200, \"batches\": [\"B1\", \"B2\", \"B3\"] | \"litres\": 1200, \"batches\": [\"B1\", \"B2\"]",
                "BATCH_PLACE | \"at\": \"well\", \"batch\": \"B2\" | \"at\": \"yard\", \"batch\": \"B2\"",
                "EVEN_BATCHES | \"compostKg\": 11.334, \"waterL\": 113.34, \"lots\": {\"windrow\": 11.334} | \"compostKg\": 11.35,"
                        + " \"waterL\": 113.5, \"lots\": {\"windrow\": 11.35}",
                "COMPOST_RATE | \"compostKg\": 11.334, \"waterL\": 113.34, \"lots\": {\"windrow\": 11.334} | \"compostKg\": 2,"
                        + " \"waterL\": 20, \"lots\": {\"windrow\": 2}",
                "WATER_ON_BOARD | \"at\": \"A\", \"litres\": 200 | \"at\": \"A\", \"litres\": 205",
                "USE_BY | 13:46:20\", \"lastDrop\": \"2027-04-20T12 | 14:15:00\", \"lastDrop\": \"2027-04-20T12",
                "TOTALS | \"dumpedL\": 200 | \"dumpedL\": 0",
                "SCORE | \"soft\": -112 | \"soft\": -92",
            })
    void aPlanWithMixFromTheWaterThatBreaksARuleIsCaughtByThatRule(Rule rule, String right, String wrong)
            throws Exception {
        assertThat(rulesBroken(WorkedDay.atTheWater(), edited(WorkedDay.PLAN_AT_THE_WATER, right, wrong)))
                .contains(rule);
    }

    @Test
    void aBucketThatWasAssumedIsNotHeldAgainstASeasonThatGivesNone() throws Exception {
        String assumed = WorkedDay.PLAN_AT_THE_FIELD.replace(
                "\"rigs\": {\"R1\": {", "\"rigs\": {\"R1\": {\"nurseTankL\": 4000, \"bucketKg\": 13.608, ");
        Season weighed = WorkedDay.season(day -> {});
        Season unweighed = weighed.change()
                .rigs(List.of(weighed.rigs()
                        .get(0)
                        .change()
                        .bucketKg(OptionalDouble.empty())
                        .rig()))
                .season();

        assertThat(Audit.check(weighed, plan(assumed))).isEmpty();
        assertThat(Audit.check(unweighed, plan(assumed))).isEmpty();
    }

    @Test
    void aPlanThatReachesItsBoundsHolds() throws Exception {
        assertThat(rulesBroken(WorkedDay.season(day -> {}), withBounds(WorkedDay.BOUNDS)))
                .isEmpty();
    }

    @ParameterizedTest(name = "{0}: {1} -> {2}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "BOUND | \"planterFills\": 2 | \"planterFills\": 3",
                "BOUND | \"medium\": -1200, \"provedBest\" | \"medium\": -1200, \"effortMin\": 9999, \"provedBest\"",
                "BOUND | \"waterTrips\": 1 | \"waterTrips\": 2",
                "BOUND | \"waterTrips\": 1, \"unservedHa\": 0 | \"waterTrips\": 1, \"unservedHa\": 0.1",
                "BOUND | \"lateHaDays\": 6, \"medium\" | \"lateHaDays\": 6.00001, \"medium\"",
                "BOUND | \"medium\": -1200, \"provedBest\": true | \"medium\": -1201, \"provedBest\": false",
                "PROVEN_BEST | \"medium\": -1200 | \"medium\": -1199",
                "BOTTLENECKS | \"waterLimit\" | \"hose\"",
            })
    void aPlanThatGoesAgainstWhatItSaysOfOthersIsCaught(Rule rule, String right, String wrong) throws Exception {
        assertThat(rulesBroken(WorkedDay.season(day -> {}), withBounds(edited(WorkedDay.BOUNDS, right, wrong))))
                .containsOnly(rule);
    }

    @Test
    void whereNothingIsLateOrWaitedForNoShareOfItGoesAway() throws Exception {
        String late = edited(
                withBounds(WorkedDay.BOUNDS), "{\"hard\": 0, \"medium\": -1200,", "{\"hard\": 0, \"medium\": 0,");
        String waiting = edited(
                withBounds(WorkedDay.BOUNDS), "\"dumpedL\": 0, \"waitMin\": 2,", "\"dumpedL\": 0, \"waitMin\": 0,");

        assertThat(rulesBroken(WorkedDay.season(day -> {}), late)).contains(Rule.BOTTLENECKS);
        assertThat(rulesBroken(WorkedDay.season(day -> {}), waiting)).contains(Rule.BOTTLENECKS);
    }

    @Test
    void aFieldInTheHandsOfAPlanterThatMayNotPlantItIsCaught() throws Exception {
        assertThat(rulesBrokenIf(day -> day.planterOfB = "P2")).contains(Rule.ALLOWED_PLANTER);
    }

    @Test
    void plantingBeforeTheWindowOpensIsCaught() throws Exception {
        assertThat(rulesBrokenIf(day -> day.opensA = LocalDate.of(2027, 4, 21))).containsOnly(Rule.WINDOW_OPENING);
    }

    @Test
    void beginningAFieldBeforeTheDayThatItIsFixedToIsCaught() throws Exception {
        // A is begun on 20 April
        assertThat(rulesBroken(fixedTo(LocalDate.of(2027, 4, 20)), fixed(0))).isEmpty();
        assertThat(rulesBroken(fixedTo(LocalDate.of(2027, 4, 21)), fixed(-1))).containsOnly(Rule.FIXED_DAY);
        assertThat(rulesBroken(fixedTo(LocalDate.of(2027, 4, 19)), fixed(0))).containsOnly(Rule.SCORE);
        assertThat(rulesBroken(fixedTo(LocalDate.of(2027, 4, 19)), fixed(-1))).isEmpty();
    }

    private static Season fixedTo(LocalDate day) {
        Season season = WorkedDay.season(setup -> {});
        return season.change()
                .fields(season.fields().stream()
                        .map(field -> field.id().equals("A")
                                ? field.change()
                                        .fixed(new Fixed(Optional.empty(), Optional.of(day)))
                                        .field()
                                : field)
                        .toList())
                .season();
    }

    private static String fixed(int hard) {
        return edited(
                edited(
                        WorkedDay.PLAN_AT_THE_FIELD,
                        "\"distance\": \"km\"}",
                        "\"distance\": \"km\"}, \"fixed\": [\"A\"]"),
                "\"hard\": 0",
                "\"hard\": " + hard);
    }

    @Test
    void plantingOnAFieldThatIsStillWetIsCaught() throws Exception {
        // 20 mm x 0.05 days per mm close until midnight, 20.1 mm for one more day
        assertThat(rulesBrokenIf(day -> day.rainOnThe19thMm = 20)).isEmpty();
        assertThat(rulesBrokenIf(day -> day.rainOnThe19thMm = 20.1))
                .containsOnly(Rule.RAIN_CLOSURE, Rule.OPEN_ON_ARRIVAL);
    }

    @Test
    void rainUnderTheLimitClosesNothingAndRainAtTheLimitDoes() throws Exception {
        assertThat(rulesBrokenIf(day -> day.rainOnThe20thMm = 4.9)).isEmpty();
        assertThat(rulesBrokenIf(day -> day.rainOnThe20thMm = 5)).containsOnly(Rule.RAIN_CLOSURE, Rule.OPEN_ON_ARRIVAL);
    }

    @Test
    void plantingOnADayOfWetGroundIsCaughtForThatDrainageClassAlone() throws Exception {
        // field A, moderately drained, is planted on 20 April
        WetDay wet = new WetDay(LocalDate.of(2027, 4, 20), 31, 30, 0);

        assertThat(rulesBroken(inSpring(Drainage.MODERATE, wet), WorkedDay.PLAN_AT_THE_FIELD))
                .containsOnly(Rule.RAIN_CLOSURE, Rule.OPEN_ON_ARRIVAL);
        assertThat(rulesBroken(inSpring(Drainage.POOR, wet), WorkedDay.PLAN_AT_THE_FIELD))
                .isEmpty();
    }

    @Test
    void aPlanterThatComesOutDaysBeforeItsFirstFillIsCaught() throws Exception {
        String onSaturday = edited(
                WorkedDay.PLAN_AT_THE_FIELD,
                "{\"kind\": \"move\", \"start\": \"2027-04-20T07:00:00\", \"end\": \"2027-04-20T07:20:00\"",
                "{\"kind\": \"move\", \"start\": \"2027-04-17T07:00:00\", \"end\": \"2027-04-17T07:20:00\"");

        assertThat(rulesBroken(WorkedDay.season(day -> day.first = LocalDate.of(2027, 4, 16)), onSaturday))
                .contains(Rule.COMING_OUT);
    }

    private static Season inSpring(Drainage drainage, WetDay wet) {
        return WorkedDay.season(day -> {})
                .inSpring(new GroundRecord("a record", Map.of(), Map.of(drainage, List.of(wet))));
    }

    @Test
    void aDrawThatLeavesNoTimeToHookUpIsCaught() throws Exception {
        // 60 s of treatment and 4,000 L at 4 L/s take all of its 1,060 s
        assertThat(rulesBrokenIf(day -> day.hookUpS = 1)).containsOnly(Rule.DRAW_TIME);
    }

    @Test
    void workOnAClosedDayIsCaught() throws Exception {
        assertThat(rulesBrokenIf(day -> day.closed = LocalDate.of(2027, 4, 20))).contains(Rule.WORK_HOURS);
    }

    @Test
    void workBeforeTheSeasonBeginsIsCaught() throws Exception {
        assertThat(rulesBrokenIf(day -> day.first = LocalDate.of(2027, 4, 21))).contains(Rule.SEASON_DAYS);
    }

    @Test
    void aFindingSaysWhereAndWhatInOneLine() throws Exception {
        String text = edited(WorkedDay.PLAN_AT_THE_FIELD, "\"waterL\": 120", "\"waterL\": 121");
        assertThat(Audit.check(WorkedDay.season(day -> {}), plan(text)))
                .extracting(Finding::toString)
                .containsExactly("BATCH_WATER: batch B3: its share of the drum is 120 L, it takes 121 L");
    }

    @Test
    void aPlanOfNonsenseIsReportedAndNothingElse() {
        LocalDateTime never = LocalDateTime.MIN;
        LocalDateTime always = LocalDateTime.MAX;
        double none = Double.NaN;
        List<Activity> nonsense = List.of(
                new Activity.Move(never, always, "A", "nowhere", none),
                new Activity.Wait(always, never, "B", WaitReason.RIG),
                new Activity.Fill(never, never, "A", "L1"),
                new Activity.Plant(never, always, "A", "L1", Double.POSITIVE_INFINITY),
                new Activity.Draw(never, always, "well", none),
                new Activity.Extract(always, never, "A", "B1"),
                new Activity.Clean(always, always, ""),
                new Activity.Transfer(never, always, "A", "L1", Double.NEGATIVE_INFINITY),
                new Activity.Dump(never, always, "A", Double.MAX_VALUE));
        Plan plan = new Plan(
                new Plan.SeasonSource("", "", "", DisplayUnits.METRIC),
                new Plan.Score(Long.MIN_VALUE, Long.MAX_VALUE, Long.MIN_VALUE),
                new Plan.Totals(
                        none, none, none, none, -1, -1, -1, -1, none, none, none, none, none, none, none, always),
                Map.of("P1", new Plan.PlanterPlan(none, List.of("", "A", "A"), List.of("A"), nonsense)),
                Map.of("R1", new Plan.RigPlan(nonsense)),
                List.of(new Plan.Load(
                        "L1", "P1", "R1", "standard", none, List.of("B1", "B1"), none, none, never, always)),
                List.of(new Plan.Batch("B1", "R1", always, never, none, none, Map.of("windrow", none))),
                List.of(new Plan.Unserved("A", none, "")),
                Optional.empty(),
                List.of());
        assertThat(Audit.check(WorkedDay.season(day -> {}), plan))
                .extracting(Finding::rule)
                .contains(Rule.FIGURES, Rule.SEASON_DAYS, Rule.FIELD_AREA, Rule.TANK_CAPACITY, Rule.TOTALS, Rule.SCORE);
    }

    @Test
    void aPlanThatBeginsOtherwiseThanItsSeasonStandsIsFound() throws Exception {
        Season season = WorkedDay.season(day -> {});
        Season underWay = season.change()
                .standing(Optional.of(Standing.at(season.first().plusDays(1).atTime(12, 0))))
                .season();

        assertThat(rulesBroken(underWay, WorkedDay.PLAN_AT_THE_FIELD)).contains(Rule.START, Rule.WORK_HOURS);
    }

    @Test
    void aWaitForARigThatBeginsBeforeTheNextFieldIsOpenIsCaught() throws Exception {
        // the wait at 10:20 on 20 April is for the load out of which B is planted
        assertThat(rulesBrokenIf(day -> day.opensB = LocalDate.of(2027, 4, 21)))
                .contains(Rule.WAIT_START, Rule.WINDOW_OPENING);
    }

    @Test
    void aMachineThatWorksWhileItIsDownIsFound() throws Exception {
        Season season = WorkedDay.season(day -> {});
        Season down = season.change()
                .outages(List.of(new Outage(
                        "R1",
                        season.first().atStartOfDay(),
                        season.first().plusDays(2).atStartOfDay())))
                .season();

        assertThat(rulesBroken(down, WorkedDay.PLAN_AT_THE_FIELD)).containsOnly(Rule.WORK_HOURS);
    }

    @Test
    void everyRuleIsBrokenByATest() {
        Set<Rule> broken =
                EnumSet.of(Rule.ALLOWED_PLANTER, Rule.WINDOW_OPENING, Rule.RAIN_CLOSURE, Rule.START, Rule.WAIT_START);
        broken.add(Rule.FIXED_DAY);
        broken.addAll(List.of(Rule.OPEN_ON_ARRIVAL, Rule.COMING_OUT));
        broken.addAll(List.of(Rule.OVERTIME, Rule.LEAST_FILL)); // OvertimeTest, LeastFillTest
        broken.addAll(List.of(Rule.SET_UP, Rule.CLOSE_UP, Rule.FLUSH)); // DayRoutinesTest
        broken.add(Rule.SPRAY_HOURS); // SprayersTest
        broken.add(Rule.BILL); // PricesTest
        broken.add(Rule.MOUNTED); // MountedSprayersTest
        broken.addAll(List.of(Rule.WITHOUT_EXTRACT, Rule.LONGEST_WAIT)); // WithoutExtractTest
        broken.addAll(List.of(Rule.DONE_BEFORE, Rule.CARRIED_BATCHES, Rule.CARRIED_MIX)); // StartRecordsTest
        broken.addAll(List.of(Rule.LOADING_PLACE, Rule.LOADING_TIME, Rule.COMPOST_ON_BOARD)); // FetchedCompostTest
        broken.addAll(List.of(Rule.COMPOST_LOAD, Rule.PAYLOAD));
        for (Method test : AuditTest.class.getDeclaredMethods()) {
            CsvSource rows = test.getAnnotation(CsvSource.class);
            if (rows != null) {
                for (String row : rows.value()) {
                    broken.add(Rule.valueOf(row.substring(0, row.indexOf(' '))));
                }
            }
        }
        assertThat(broken).containsExactlyInAnyOrder(Rule.values());
    }

    private Set<Rule> rulesBrokenIf(Consumer<WorkedDay.Setup> change) throws Exception {
        return rulesBroken(WorkedDay.season(change), WorkedDay.PLAN_AT_THE_FIELD);
    }

    private Set<Rule> rulesBroken(Season season, String text) throws Exception {
        Set<Rule> rules = EnumSet.noneOf(Rule.class);
        Audit.check(season, plan(text)).forEach(finding -> rules.add(finding.rule()));
        return rules;
    }

    private Plan plan(String text) throws Exception {
        return PlanFile.readToAudit(Files.writeString(folder.resolve("plan.json"), text));
    }

    private static String withBounds(String bounds) {
        return edited(WorkedDay.PLAN_AT_THE_FIELD, "\"unserved\": []", "\"unserved\": [], " + bounds);
    }

    private static String edited(String text, String right, String wrong) {
        assertThat(text).containsOnlyOnce(right);
        return text.replace(right, wrong);
    }
}

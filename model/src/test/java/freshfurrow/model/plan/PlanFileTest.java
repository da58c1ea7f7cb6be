package freshfurrow.model.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.catchThrowable;
import static org.assertj.core.api.Assumptions.assumeThat;

import freshfurrow.model.quantity.ClockFace;
import freshfurrow.model.quantity.DisplayUnits;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlanFileTest {
    private static final LocalDateTime SEVEN = LocalDateTime.of(2027, 4, 20, 7, 0);

    @TempDir
    private Path folder;

    @Property(tries = 200)
    void aPlanWrittenAndReadIsTheSamePlan(@ForAll long seed) throws Exception {
        Plan plan = RandomPlans.plan(seed);
        Path file = Files.createTempFile("plan", ".json");
        try {
            Files.writeString(file, PlanFile.toJson(plan));
            Plan read = PlanFile.readToAudit(file);
            assertThat(read).isEqualTo(plan);
            assertThat(read.planters().keySet())
                    .containsExactlyElementsOf(plan.planters().keySet());
            assertThat(PlanFile.toJson(read)).isEqualTo(PlanFile.toJson(plan));
        } finally {
            Files.delete(file);
        }
    }

    @Test
    void everyActivityLoadAndBatchHasItsLine() {
        assertThat(PlanFile.toJson(small(8.1))).isEqualTo("""
                {
                  "format": "freshfurrow-plan/1",
                  "season": {"name": "Example", "file": "season.yaml", "sha256": "00ff", "units": {"area": "ac", "volume": "gal", "mass": "lb", "distance": "mi"}},
                  "score": {"hard": 0, "medium": -1200, "soft": -5310},
                  "totals": {"areaHa": 8.1, "unservedHa": 0.000001, "lateHaDays": 0, "planterFills": 1, "waterTrips": 1, "batches": 1, "compostKg": 13.608, "dumpedL": 0, "waitMin": 0.333, "driveKm": 10000000, "smallestMarginMin": 1.5, "finish": "2027-04-20T07:00:00"},
                  "planters": {
                    "P1": {
                      "tankL": 2271.247,
                      "fields": ["N40", "S80"],
                      "activities": [
                        {"kind": "wait", "start": "2027-04-20T07:00:00", "end": "2027-04-20T07:00:30", "at": "N40", "why": "rig"},
                        {"kind": "plant", "start": "2027-04-20T07:00:00", "end": "2027-04-20T07:00:30", "field": "N40", "load": "L0001", "areaHa": 8.1}
                      ]
                    }
                  },
                  "rigs": {"R1": {"activities": []}},
                  "loads": [
                    {"id": "L0001", "planter": "P1", "rig": "R1", "recipe": "standard", "litres": 2271.247, "batches": ["B0001"], "appliedL": 2271.247, "dumpedL": 0, "deadline": "2027-04-20T07:00:00", "lastDrop": "2027-04-20T07:00:00"}
                  ],
                  "batches": [
                    {"id": "B0001", "rig": "R1", "start": "2027-04-20T07:00:00", "end": "2027-04-20T07:00:00", "compostKg": 13.608, "waterL": 151.416, "lots": {"windrow": 13.608}}
                  ],
                  "unserved": []
                }
                """);
    }

    /** 64 MiB are 67,108,864 bytes. */
    /** They say a bound beside the totals that is weaker than the one among the bounds. */
    @Test
    void filesOfBeforeReadAsTheyDid() throws Exception {
        String text = PlanFile.toJson(small(8.1));
        Path file = Files.writeString(
                folder.resolve("plan.json"),
                text.replace("\"waterTrips\": 1, ", "\"waterTrips\": 1, \"refillLowerBound\": 1, "));

        assertThat(Files.readString(file)).isNotEqualTo(text);
        assertThat(PlanFile.toJson(PlanFile.readToAudit(file))).isEqualTo(text);
    }

    @Test
    void aTextOf64MebibytesIsTooLongToBeReadAgain() {
        assertThat(PlanFile.isReadable("x".repeat(67_108_863))).isTrue();
        assertThat(PlanFile.isReadable("x".repeat(67_108_864))).isFalse();
    }

    @Test
    void namesOfFieldsAndWhatARigCarriesAreToldWhereKnown() {
        Plan plain = small(8.1);
        Plan plan = new Plan(
                new Plan.SeasonSource(
                        "Example", "season.yaml", "00ff", DisplayUnits.US, Map.of("N40", "North forty"), List.of()),
                plain.score(),
                plain.totals(),
                plain.planters(),
                Map.of(
                        "R1",
                        new Plan.RigPlan(
                                OptionalDouble.of(4542.494),
                                OptionalDouble.empty(),
                                OptionalDouble.of(13.608),
                                List.of())),
                plain.loads(),
                plain.batches(),
                plain.unserved(),
                plain.bounds(),
                plain.limits());
        assertThat(PlanFile.toJson(plan))
                .contains(
                        "\"distance\": \"mi\"}, \"names\": {\"N40\": \"North forty\"}}",
                        "\"rigs\": {\"R1\": {\"nurseTankL\": 4542.494, \"bucketKg\": 13.608, \"activities\": []}}");
    }

    @Test
    void theClockIsToldWhereItIsNotTheOneUsualWithTheUnits() throws Exception {
        Plan usual = small(8.1);
        String text = PlanFile.toJson(usual);
        assertThat(text).doesNotContain("clock");
        String other = text.replace("\"distance\": \"mi\"}", "\"distance\": \"mi\"}, \"clock\": \"24h\"");
        Plan read = PlanFile.fromJson(Path.of("plan.json"), other);
        assertThat(read.season().units()).isEqualTo(usual.season().units().withClock(ClockFace.TWENTY_FOUR_HOURS));
        assertThat(PlanFile.toJson(read)).isEqualTo(other);
    }

    @Test
    void boundsAndLimitsFollowWhenTheyWereWorkedOut() {
        assertThat(PlanFile.toJson(bounded())).endsWith("""
                  "unserved": [],
                  "bounds": {"planterFills": 41, "waterTrips": 20, "unservedHa": 0, "lateHaDays": 12.1, "medium": -1210, "provedBest": false},
                  "limits": [
                    {"resource": "waterLimit", "unservedHa": 0, "lateHaDays": 10, "waitMin": 12, "shareOfLate": 0.25, "shareOfWait": 0.9}
                  ]
                }
                """);
    }

    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"provedBest\": false | \"provedBest\": 0 | bounds.provedBest: expected true or false, found 0",
                "\"waterTrips\": 20, | `` | bounds: the key 'waterTrips' is missing",
                "\"waterTrips\": 20 | \"waterTrips\": -1 | bounds: waterTrips is -1.0, expected 0 or more",
                "\"medium\": -1210 | \"medium\": 1 | bounds: medium is 1, expected 0 or less",
                "\"waterLimit\" | \"water\" | limits[0].resource: expected one of planter, rig, hose, waterLimit, compost",
                "\"shareOfWait\": 0.9 | \"shareOfWait\": 1.1 | limits[0]: shareOfWait is 1.1, expected a share from 0 to 1",
                "\"bounds\" | \"bound\" | at the top: unknown key 'bound', the keys here are format",
            })
    void whatIsWrongWithBoundsAndLimitsIsSaidInOneLine(String right, String wrong, String message) throws IOException {
        String text = PlanFile.toJson(bounded());
        assertThat(text).contains(right);
        assertRefused(text.replace(right, wrong).getBytes(StandardCharsets.UTF_8), message);
    }

    @Test
    void boundsAndLimitsOutOfTheirRangeAreRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Plan.Bounds(1, 1, Double.NaN, 0, 0, true));
        assertThatIllegalArgumentException().isThrownBy(() -> new Plan.Bounds(1, 1, 0, -1, 0, true));
        assertThatIllegalArgumentException().isThrownBy(() -> new Plan.Bounds(1, 1, 0, 0, 0, -1, true));
        assertThatIllegalArgumentException().isThrownBy(() -> new Plan.Limit(Resource.RIG, 0, 0, 0, -0.1, 0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Plan.Limit(Resource.RIG, 0, 0, Double.POSITIVE_INFINITY, 0, 0));
    }

    private static Plan bounded() {
        return small(8.1)
                .withBounds(new Plan.Bounds(41, 20, 0, 12.1, -1210, false))
                .withLimits(List.of(new Plan.Limit(Resource.WATER_LIMIT, 0, 10, 12, 0.25, 0.9)));
    }

    @Test
    void aFigureThatIsNotFiniteIsNeverWritten() {
        assertThatIllegalArgumentException().isThrownBy(() -> PlanFile.toJson(small(Double.NaN)));
        assertThatIllegalArgumentException().isThrownBy(() -> PlanFile.toJson(small(Double.POSITIVE_INFINITY)));
    }

    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "freshfurrow-plan/1 | freshfurrow-plan/2 | format: 'freshfurrow-plan/2' is not a format this version reads",
                "\"hard\": 0, | `` | score: the key 'hard' is missing",
                "\"hard\": 0 | \"hard\": 0.5 | score.hard: expected a whole number, found 0.5",
                "\"planterFills\": 1 | \"planterFills\": 3000000000 | totals.planterFills: expected a whole number",
                "\"tankL\": 2271.247 | \"tankL\": \"600 gal\" | planters.P1.tankL: expected a number, found \"600 gal\"",
                "\"tankL\": 2271.247 | \"tankL\": NaN | line 8, column",
                "\"tankL\": 2271.247 | \"tankL\": 1e999 | planters.P1.tankL: expected a number",
                "\"tankL\": 2271.247 | \"tankL\": null | planters.P1.tankL: expected a number, found null",
                "\"tankL\": 2271.247 | \"tankL\": 1, \"tankL\": 2 | Duplicate field 'tankL'",
                "\"tankL\": 2271.247 | \"tank\": 1, \"tankL\": 2 | planters.P1: unknown key 'tank'",
                "\"fields\": [\"N40\" | \"fields\": [40 | planters.P1.fields[0]: expected text, found 40",
                "\"why\": \"rig\" | \"why\": \"RIG\" | planters.P1.activities[0].why: expected one of rig, wet",
                "\"kind\": \"plant\" | \"kind\": \"sow\" | planters.P1.activities[1].kind: expected one of move, wait",
                "\"kind\": \"plant\" | \"kind\": \"move\" | planters.P1.activities[1]: the key 'from' is missing",
                "\"finish\": \"2027-04-20T07:00:00\" | \"finish\": \"2027-04-20T07:00\" | totals.finish: expected a local date",
                "\"finish\": \"2027-04-20T07:00:00\" | \"finish\": \"2027-02-30T07:00:00\" | totals.finish: expected a local",
                "\"finish\": \"2027-04-20T07:00:00\" | \"finish\": \"2027-04-20T07:00:00Z\" | totals.finish: expected a local",
                "\"area\": \"ac\" | \"area\": \"acre\" | season.units.area: expected one of ha, ac, found \"acre\"",
                "\"unserved\": [] | \"unserved\": {} | unserved: expected a list, found an object",
                "\"lots\": {\"windrow\": 13.608} | \"lots\": [] | batches[0].lots: expected an object, found a list",
                "\"loads\": [ | \"loads\": [[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[ | nesting depth",
                "\"season.yaml\" | \"../season.yaml\" | season.file: expected the bare name of a file, without a folder, found \"../season.yaml\"",
                "\"season.yaml\" | \"/etc/hostname\" | season.file: expected the bare name of a file",
                "\"season.yaml\" | \"plan/\" | season.file: expected the bare name of a file",
                "\"season.yaml\" | \"\\u0000\" | season.file: expected the bare name of a file",
                "\"season.yaml\" | \"..\" | season.file: expected the bare name of a file",
                "\"season.yaml\" | \"\" | season.file: expected the bare name of a file",
                "\"areaHa\": 8.1, \"unserved | \"areaHa\": 1e15, \"unserved | totals.areaHa: expected a number of 100,000,000,000 at most",
                "\"batches\": 1, | \"batches\": 2000000000, | totals.batches: expected a count of 10,000,000 at most",
                "\"deadline\": \"2027 | \"deadline\": \"0001 | loads[0].deadline: expected a year from 2000 to 2100",
                "\"deadline\": \"2027 | \"deadline\": \"9999 | loads[0].deadline: expected a year from 2000 to 2100",
                "\"standard\" | \"\\u202edrats\" | loads[0].recipe: '?drats' contains an invisible character",
                "\"standard\" | \"\\u009b2J\" | loads[0].recipe: '?2J' contains an invisible character",
                "\"standard\" | \"\\ud800\" | loads[0].recipe: '?' contains an invisible character",
                "{\"windrow\": | {\"\\u001b[2J\": | batches[0].lots: '?[2J' contains an invisible character",
            })
    void whatIsWrongIsSaidInOneLineWithItsPlace(String right, String wrong, String message) throws IOException {
        String text = PlanFile.toJson(small(8.1));
        assertThat(text).contains(right);
        assertRefused(text.replace(right, wrong).getBytes(StandardCharsets.UTF_8), message);
    }

    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"load\": \"L0001\" | \"load\": \"L9\" | planters.P1.activities[1].load: the plan has no load 'L9'",
                "\"batches\": [\"B0001\"] | \"batches\": [\"B9\"] | loads[0].batches[0]: the plan has no batch 'B9'",
                "\"planter\": \"P1\" | \"planter\": \"P9\" | loads[0].planter: the plan has no planter 'P9'",
                "\"R1\": {\"act | \"R2\": {\"act | loads[0].rig: the plan has no rig 'R1'",
                "[\"N40\", \"S80\"] | [\"N40\", \"N40\"] | planters.P1.fields[1]: the field 'N40' is there twice",
                "\"dumpedL\": 0, \"deadline | \"dumpedL\": -1, \"deadline | loads[0].dumpedL: expected 0 or more, found -1.0",
                "\"tankL\": 2271.247 | \"tankL\": 0 | planters.P1.tankL: expected 0.001 or more, found 0.0",
                "\"planterFills\": 1 | \"planterFills\": -1 | totals.planterFills: expected 0 or more, found -1.0",
                "\"deadline\": \"2027 | \"deadline\": \"2029 | loads[0].deadline: 2029-04-20T07:00:00 is more than 407 days from the middle",
                "07:00:30\", \"at\" | 06:59:59\", \"at\" | planters.P1.activities[0].end: it ends at 2027-04-20T06:59:59, before it starts",
                "\"R1\": {\"activities\": [] | \"R1\": {\"activities\": [{\"kind\": \"wait\", \"start\": \"2027-04-20T07:00:00\", \"end\": \"2027-04-20T07:00:00\", \"at\": \"N40\", \"why\": \"wet\"}] | rigs.R1.activities[0].kind: no rig does 'wait'",
            })
    void aPlanThatIsNotWholeIsReadOnlyToBeAudited(String right, String wrong, String message) throws Exception {
        String text = PlanFile.toJson(small(8.1));
        assertThat(text).contains(right);
        String broken = text.replace(right, wrong);
        assertRefused(broken.getBytes(StandardCharsets.UTF_8), message);
        assertThat(PlanFile.readToAudit(folder.resolve("plan.json"))).isNotNull();
    }

    @Test
    void aFileThatIsNoOrdinaryOneIsRefusedUnread() {
        Path endless = Path.of("/dev/zero");
        assumeThat(Files.exists(endless)).isTrue();
        assertThat(catchThrowable(() -> PlanFile.read(endless)))
                .isInstanceOf(PlanFileException.class)
                .hasMessage("/dev/zero: is not an ordinary file; give a plan file, such as plan.json");
    }

    @Test
    void whatIsNoPlanFileAtAllIsRefused() throws IOException {
        assertRefused(new byte[0], "at the top: expected an object");
        assertRefused("[1, 2]".getBytes(StandardCharsets.UTF_8), "at the top: expected an object, found a list");
        assertRefused("season: {name: x}".getBytes(StandardCharsets.UTF_8), "is not JSON");
        assertRefused("{\"format\": \"freshfurrow-plan/1\"".getBytes(StandardCharsets.UTF_8), "is not JSON");
        assertRefused((PlanFile.toJson(small(1)) + "{}").getBytes(StandardCharsets.UTF_8), "is not JSON");
        assertRefused(new byte[] {'{', '"', (byte) 0xff, (byte) 0xc0, '"', '}'}, "is not JSON");
        assertRefused(new byte[64 << 20], "is 64 MB large");
    }

    @Test
    void aFileThatIsNotThereAndAFolderAreRefused() {
        assertThat(catchThrowable(() -> PlanFile.read(folder.resolve("none.json"))))
                .isInstanceOf(PlanFileException.class)
                .hasMessageEndingWith("none.json: there is no such file; make a plan with 'freshfurrow plan'");
        assertThat(catchThrowable(() -> PlanFile.read(folder)))
                .isInstanceOf(PlanFileException.class)
                .hasMessageContaining("is a folder");
    }

    private void assertRefused(byte[] content, String message) throws IOException {
        Path file = Files.write(folder.resolve("plan.json"), content);
        Throwable thrown = catchThrowable(() -> PlanFile.read(file));
        assertThat(thrown).isInstanceOf(PlanFileException.class).hasMessageContaining(message);
        assertThat(thrown.getMessage()).startsWith(file.toString()).doesNotContain("\n");
    }

    private static Plan small(double areaHa) {
        LocalDateTime end = SEVEN.plusSeconds(30);
        return new Plan(
                new Plan.SeasonSource("Example", "season.yaml", "00ff", DisplayUnits.US),
                new Plan.Score(0, -1200, -5310),
                new Plan.Totals(areaHa, 0, 1e-6, -0.0, 1, 1, 0, 1, 13.608, 0, 1.0 / 3, 0, 0, 1e7, 1.5, SEVEN),
                Map.of(
                        "P1",
                        new Plan.PlanterPlan(
                                2271.247,
                                List.of("N40", "S80"),
                                List.of(),
                                List.of(
                                        new Activity.Wait(SEVEN, end, "N40", WaitReason.RIG),
                                        new Activity.Plant(SEVEN, end, "N40", "L0001", areaHa)))),
                Map.of("R1", new Plan.RigPlan(List.of())),
                List.of(new Plan.Load(
                        "L0001", "P1", "R1", "standard", 2271.247, List.of("B0001"), 2271.247, 0, SEVEN, SEVEN)),
                List.of(new Plan.Batch("B0001", "R1", SEVEN, SEVEN, 13.608, 151.416, Map.of("windrow", 13.608))),
                List.of(),
                Optional.empty(),
                List.of());
    }
}

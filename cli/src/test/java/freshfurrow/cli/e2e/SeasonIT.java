package freshfurrow.cli.e2e;

import static freshfurrow.cli.e2e.MistakesIT.assertNoTrace;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A season from its file to the crew's sheet. */
final class SeasonIT {
    @TempDir
    private Path folder = Path.of("");

    private String season = "";

    @BeforeEach
    void writeSeason() throws Exception {
        season = SeasonOnDisk.in(folder).toString();
    }

    @Test
    void checkSumsASeasonUp() throws Exception {
        // 204 ac x 2 lb/ac and x 20 gal/ac; 40 ft x 5 mph x 0.65 / 8.25 = 15.8 ac/h (ASABE EP496); 1,200 gal of water
        // about 10,014 lb
        Launcher.Result check = InProcess.run("check", season);
        assertThat(check.exitCode()).isZero();
        assertThat(check.err()).isEmpty();
        assertThat(check.out())
                .contains("Season Test farm", "204.0 ac", "408 lb", "4,080 gal", "15.8 ac/h", "600 gal for 30.0 ac")
                .contains("10,014 lb of water", "docs/safety.md");
    }

    /** Each a process of its own. */
    @Test
    void aPlanIsWrittenAuditedAndReadByTheCrew() throws Exception {
        Launcher.Result plan = Launcher.run("plan", season, "--steps", "500");
        assertThat(plan.exitCode()).isZero();
        assertThat(plan.err()).as("quiet where there is no terminal").isEmpty();
        assertThat(plan.out())
                .contains("Plan of season Test farm", "Planted      204.0 ac", "Written to ")
                .contains(folder.resolve("plan").resolve("plan.json").toString());

        String planned = folder.resolve("plan").toString();
        Launcher.Result audit = Launcher.run("audit", season, planned);
        assertThat(audit.out()).startsWith("No problems found. 82 rules checked on 4 of 4 fields");
        assertThat(audit.err()).isEmpty();
        assertThat(audit.exitCode()).isZero();

        Launcher.Result day = Launcher.run("day", planned, "2027-04-20");
        assertThat(day.out())
                .contains(
                        "DAY SHEET   Tuesday, April 20, 2027",
                        "RIG R1",
                        "PLANTER P1   tank 600 gal",
                        "USE BY ",
                        "FILL ");
        assertThat(day.exitCode()).isZero();
    }

    @Test
    void aPlanTellsWhatHoldsTheSeasonBack() throws Exception {
        // All compost comes two days after the only window closes: compost alone makes the plan late.
        Path file = folder.resolve("season.yaml");
        Files.writeString(
                file,
                Files.readString(file)
                        .replace(
                                "windrow: {mass: 4000 lb, from: 2027-04-01}",
                                "windrow: {mass: 4000 lb, from: 2027-05-03}"));

        Launcher.Result plan = InProcess.run("plan", season, "--steps", "200");

        assertThat(plan.exitCode()).isZero();
        assertThat(plan.out())
                .contains(
                        "Bottlenecks",
                        "Late or unplanted area would shrink by 100 % if compost was unlimited from day one");
        assertThat(Files.readString(folder.resolve("plan").resolve("plan.json")))
                .contains("\"limits\"", "\"waterLimit\"", "\"shareOfLate\"");
    }

    @Test
    void aDateOutsideThePlanIsSaidPlainly() throws Exception {
        InProcess.run("plan", season, "--steps", "0");
        Launcher.Result day = InProcess.run("day", folder.resolve("plan").toString(), "2027-06-01");
        assertThat(day.exitCode()).isEqualTo(1);
        assertThat(day.err()).contains("no work on 2027-06-01; it runs from 2027-04-");
        assertNoTrace(day);
    }

    @Test
    void theSameSeedAndStepsGiveTheSameBytes() throws Exception {
        Path a = folder.resolve("a");
        Path b = folder.resolve("b");
        InProcess.run("plan", season, "--steps", "2000", "--seed", "7", "--out", a.toString());
        // another process: what differs between runs of Java must not matter
        Launcher.run("plan", season, "--steps", "2000", "--seed", "7", "--out", b.toString());
        assertThat(a.resolve("plan.json")).hasSameBinaryContentAs(b.resolve("plan.json"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"first-season", "spring"})
    void oneThreadAndTwoGiveTheSameBytes(String scenario) throws Exception {
        String file = Launcher.scenario(scenario);
        for (String threads : List.of("1", "2")) {
            String out = folder.resolve(threads).toString();
            Launcher.Result plan = InProcess.run(
                    "plan", file, "--steps", "3000", "--seed", "5", "--no-page", "--threads", threads, "--out", out);
            assertThat(plan.exitCode()).isZero();
        }
        assertThat(folder.resolve("1").resolve("plan.json"))
                .hasSameBinaryContentAs(folder.resolve("2").resolve("plan.json"));
    }

    @Test
    void aPlanThatIsThereIsReplacedOnlyWhenForced() throws Exception {
        Path out = Files.createDirectory(folder.resolve("out"));
        Path file = Files.writeString(out.resolve("plan.json"), "mine");
        Launcher.Result refused = InProcess.run("plan", season, "--time", "10min", "--out", out.toString());
        assertThat(refused.exitCode()).isEqualTo(1);
        assertThat(refused.err()).contains("exists already, so nothing was planned", "--force");
        assertThat(file).hasContent("mine");

        Launcher.Result forced = InProcess.run("plan", season, "--steps", "0", "--out", out.toString(), "--force");
        assertThat(forced.exitCode()).isZero();
        assertThat(file).content().contains("freshfurrow-plan/1");
    }

    @Test
    void anAuditFindsWhatWasTamperedWith() throws Exception {
        InProcess.run("plan", season, "--steps", "0");
        Path file = folder.resolve("plan").resolve("plan.json");
        Files.writeString(
                file, Files.readString(file).replaceFirst("\"planterFills\" *: *\\d+", "\"planterFills\": 99"));
        Launcher.Result audit = InProcess.run("audit", season, file.toString());
        assertThat(audit.exitCode()).isEqualTo(1);
        assertThat(audit.out()).contains("99").doesNotContain("No problems found");
        assertNoTrace(audit);
    }

    @Test
    void anAuditSaysFirstThatTheSeasonHasChangedSince() throws Exception {
        InProcess.run("plan", season, "--steps", "0");
        Path file = folder.resolve("season.yaml");
        Files.writeString(file, Files.readString(file) + "# a remark\n");
        Launcher.Result audit =
                InProcess.run("audit", season, folder.resolve("plan").toString());
        assertThat(audit.out().lines().findFirst().orElseThrow())
                .contains("or with other variants (different checksum)");
        assertThat(audit.exitCode()).isZero();
    }

    @ParameterizedTest
    @CsvSource({"INT,130", "TERM,143"})
    void aStopKeepsTheBestPlanSoFar(String signal, int exitCode) throws Exception {
        Path out = folder.resolve("out");
        Launcher.Result stopped = stoppedAtFirstPlan(signal, season, out);
        assertThat(stopped.out()).contains("Planted      204.0 ac", "Written to ");
        assertThat(stopped.exitCode()).isEqualTo(exitCode);
        assertNoTrace(stopped);
        assertThat(InProcess.run("audit", season, out.toString()).exitCode()).isZero();
    }

    @Test
    void aStopAtTheFirstPlanOfALargeSeasonDoesNotWaitForWhatTheSearchesAfterItWouldTell() throws Exception {
        String cooperative = Launcher.scenario("cooperative");
        Path out = folder.resolve("out");

        Launcher.Result stopped = stoppedAtFirstPlan("INT", cooperative, out);

        assertThat(stopped.exitCode()).isEqualTo(130);
        assertThat(stopped.out())
                .containsPattern(
                        "Stopped before (proven minimums and )?bottlenecks were worked out; the plan does not have them.")
                .contains("Written to ");
        assertThat(out.resolve("plan.json")).content().doesNotContain("\"limits\"");
        assertThat(InProcess.run("audit", cooperative, out.toString()).exitCode())
                .isZero();
        assertNoTrace(stopped);
    }

    private Launcher.Result stoppedAtFirstPlan(String signal, String season, Path out) throws Exception {
        Process process = Launcher.start(
                folder,
                Map.of("FRESHFURROW_TERMINAL", "true"),
                List.of(
                        // a shell in the background hands down that the signal is ignored
                        "env",
                        "--default-signal=" + signal,
                        Launcher.path().toString(),
                        "plan",
                        season,
                        "--steps",
                        "1000000000000",
                        "--out",
                        out.toString()));
        Launcher.awaitOnErr(process, "fills");
        Launcher.start(folder, Map.of(), List.of("kill", "-" + signal, Long.toString(process.pid())))
                .waitFor();
        return Launcher.result(process);
    }

    @Test
    void theLauncherWorksThroughALinkFromAnyFolder() throws Exception {
        Path link = Files.createSymbolicLink(folder.resolve("ff"), Launcher.path());
        assertThat(Launcher.runIn(folder, link, "check", "season.yaml").exitCode())
                .isZero();
    }
}

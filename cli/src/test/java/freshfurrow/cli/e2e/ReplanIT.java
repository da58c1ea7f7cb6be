package freshfurrow.cli.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.audit.Audit;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanFile;
import freshfurrow.model.plan.Resource;
import freshfurrow.model.read.Reading;
import freshfurrow.model.read.SeasonFiles;
import freshfurrow.model.season.Season;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Planning again what is left of a season of four fields. */
final class ReplanIT {
    private static final String RAIN = "2027-04-20T15:00=0.8in";
    private static final int KILLS = 25;

    @TempDir
    private Path folder = Path.of("");

    private String season = "";
    private Path planned = Path.of("");

    @BeforeEach
    void plan() throws Exception {
        season = SeasonOnDisk.in(folder).toString();
        planned = folder.resolve("plan");
        assertThat(InProcess.run("plan", season, "--steps", "300", "--no-page").exitCode())
                .isZero();
    }

    @ParameterizedTest
    @CsvSource({"INT,130", "TERM,143"})
    void aStopKeepsTheBestPlanSoFarAndSaysSo(String signal, int exitCode) throws Exception {
        Process process = Launcher.start(
                folder,
                Map.of("FRESHFURROW_TERMINAL", "true"),
                List.of(
                        // a shell in the background hands down that the signal is ignored
                        "env",
                        "--default-signal=" + signal,
                        Launcher.path().toString(),
                        "replan",
                        season,
                        "--plan",
                        planned.toString(),
                        "--rain",
                        RAIN,
                        "--steps",
                        "1000000000000"));
        Launcher.awaitOnErr(process, "fills");
        Launcher.start(folder, Map.of(), List.of("kill", "-" + signal, Long.toString(process.pid())))
                .waitFor();
        Launcher.Result stopped = Launcher.result(process);

        assertThat(stopped.exitCode()).isEqualTo(exitCode);
        assertThat(stopped.out()).contains("Stopped", "Written to ", "kept as ");
        assertThat(Files.readString(planned.resolve("plans/002.json")))
                .isEqualTo(Files.readString(planned.resolve("plan.json")));
    }

    @Test
    void rainMakesANewPlanThatHoldsAndTheOldOneIsKept() throws Exception {
        String old = Files.readString(planned.resolve("plan.json"));

        Launcher.Result replan = replan("--rain", RAIN, "--steps", "300");

        assertThat(replan.err()).isEmpty();
        assertThat(replan.exitCode()).isZero();
        assertThat(replan.out())
                .contains(
                        "Replanned from Tue 2027-04-20 3:00 pm (time of the latest event given, because today is outside the season)",
                        " assumed done as planned)",
                        "corn finished",
                        "Written to ");
        assertThat(Files.readString(planned.resolve("plans/001.json"))).isEqualTo(old);
        assertThat(Files.readString(planned.resolve("plans/002.json")))
                .isEqualTo(Files.readString(planned.resolve("plan.json")));
        assertThat(planned.resolve("plan.html")).exists();
        assertThat(InProcess.run("audit", season, planned.toString()).out()).startsWith("No problems found.");
        assertThat(InProcess.run("page", planned.toString(), "--force").exitCode())
                .isZero();
        List<String> orders = replan.out()
                .lines()
                .filter(line -> line.contains(" (use by "))
                .map(String::strip)
                .toList();
        assertThat(orders).isNotEmpty();
        assertThat(InProcess.run("day", planned.toString(), "2027-04-20").out())
                .as("the plan alone tells what to do with mix already made")
                .contains("FIRST: MIX THAT IS ALREADY MADE")
                .contains(orders);
    }

    @Test
    void aNewPlanSaysWhatHoldsTheSeasonBackAsAFirstOneDoes() throws Exception {
        Launcher.Result replan = replan("--rain", RAIN, "--steps", "300");

        assertThat(replan.out()).containsPattern("Bottlenecks\n  |No bottleneck: ");
        assertThat(read(planned.resolve("plan.json")).limits()).hasSize(Resource.values().length);
        assertThat(Files.readString(planned.resolve("plan.html"))).contains("rig work took no time");
    }

    @Test
    void whatWasDoneStaysDoneToTheAcre() throws Exception {
        replan("--rain", RAIN, "--steps", "300");
        Plan first = read(planned.resolve("plan.json"));

        replan("--now", "2027-04-23T18:00", "--down", "R1=2027-04-23T18:00/2027-04-24T12:00", "--steps", "300");

        Plan second = read(planned.resolve("plan.json"));
        first.start().orElseThrow().planted().forEach(part -> assertThat(
                        second.start().orElseThrow().planted())
                .anySatisfy(later -> {
                    assertThat(later.field()).isEqualTo(part.field());
                    assertThat(later.date()).isEqualTo(part.date());
                    assertThat(later.areaHa()).isGreaterThanOrEqualTo(part.areaHa());
                }));
    }

    @Test
    void withNothingNewThePlanStaysAsItIs() throws Exception {
        Launcher.Result once = replan("--now", "2027-04-20T11:00");
        Launcher.Result twice = replan("--now", "2027-04-20T11:00");

        assertThat(once.out()).contains("No field moves.");
        assertThat(twice.out()).contains("No field moves.");
        assertThat(Files.readString(planned.resolve("plans/003.json")))
                .isEqualTo(Files.readString(planned.resolve("plans/002.json")));
    }

    @Test
    void fourReplansAtOnceAreAllKept() throws Exception {
        List<Process> replans = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            replans.add(Launcher.start(
                    folder,
                    Map.of(),
                    List.of(
                            Launcher.path().toString(),
                            "replan",
                            season,
                            "--plan",
                            planned.toString(),
                            "--now",
                            "2027-04-20T1" + i + ":00")));
        }
        List<String> kept = new ArrayList<>();
        for (Process replan : replans) {
            Launcher.Result result = Launcher.result(replan);
            assertThat(result.exitCode()).isZero();
            kept.add(result.out().replaceFirst("(?s).*, kept as [^\n]*/([0-9]+\\.json)\n.*", "$1"));
        }

        assertThat(kept).containsExactlyInAnyOrder("002.json", "003.json", "004.json", "005.json");
        List<String> beginnings = new ArrayList<>();
        for (String name : kept) {
            beginnings.add(read(planned.resolve("plans").resolve(name))
                    .start()
                    .orElseThrow()
                    .now()
                    .toString());
        }
        assertThat(beginnings)
                .containsExactlyInAnyOrder(
                        "2027-04-20T10:00", "2027-04-20T11:00", "2027-04-20T12:00", "2027-04-20T13:00");
        assertThat(planned.toFile().list()).containsExactlyInAnyOrder("plan.json", "plan.html", "plans");
    }

    @Test
    void whatIsLoggedCountsInsteadOfThePlan() throws Exception {
        Files.writeString(folder.resolve("log.csv"), """
                entry,at,fact,place,machine,load,lot,amount,until,voids,note
                1,2027-04-20T10:30,planted,N40,P1,,,10 ac,,,
                """);

        Launcher.Result replan = replan("--now", "2027-04-20T11:00", "--steps", "100");

        assertThat(replan.out()).contains("(10.0 ac logged, ");
    }

    @Test
    void aPlanOfAnotherSeasonIsRefused() throws Exception {
        Path file = folder.resolve("season.yaml");
        Files.writeString(file, Files.readString(file).replace("42 ac", "43 ac"));
        String old = Files.readString(planned.resolve("plan.json"));

        Launcher.Result replan = replan("--rain", RAIN);

        assertThat(replan.exitCode()).isEqualTo(1);
        assertThat(replan.err()).contains("this is not a plan of season.yaml as it is now");
        assertThat(Files.readString(planned.resolve("plan.json"))).isEqualTo(old);
    }

    @Test
    void aPlanThatBeginsWhereNoMachineCanStandIsRefused() throws Exception {
        replan("--rain", RAIN, "--steps", "50");
        Path file = planned.resolve("plan.json");
        Files.writeString(
                file,
                Files.readString(file)
                        .replaceFirst("\"at\": \"\\w+\", \"freeFrom\"", "\"at\": \"moon\", \"freeFrom\"")
                        // a start without its checksum is read as it is
                        .replaceFirst(",\\s*\"sha256\": \"[0-9a-f]{64}\"(?=\\s*})", ""));

        Launcher.Result audit = InProcess.run("audit", season, planned.toString());

        assertThat(audit.err())
                .contains("P1 stands at moon, which is not a place of the season")
                .hasLineCount(1);
        assertThat(audit.exitCode()).isEqualTo(1);
    }

    @Test
    void mistakesAreOneLineEachAndChangeNothing() throws Exception {
        for (Map.Entry<List<String>, String> mistake : Map.of(
                        List.of("--rain", "yesterday"), "--rain 'yesterday' is incomplete",
                        List.of("--rain", "2027-04-20T15:00=2 acres"), "not a unit of a depth of rain",
                        List.of("--down", "R9=2027-04-20T15:00/2027-04-21T15:00"), "there is no planter or rig 'R9'",
                        List.of("--down", "R1=2027-04-20T15:00/2027-04-20T14:00"), "ends before it starts",
                        List.of("--spoiled", "heap"), "there is no lot 'heap'; the season has windrow",
                        List.of("--now", "2028-01-01T00:00"), "is outside the season",
                        List.of("--spoiled", "windrow"), "give the time with --now",
                        List.of("--now", "noon"), "is not a date and time")
                .entrySet()) {
            Launcher.Result replan = replan(mistake.getKey().toArray(String[]::new));
            assertThat(replan.err()).contains(mistake.getValue()).hasLineCount(1);
            assertThat(replan.exitCode()).isEqualTo(1);
        }
        assertThat(planned.resolve("plans")).doesNotExist();
    }

    @Test
    void noPlanFileIsBrokenWhenItIsKilledAtAnyMoment() throws Exception {
        List<String> command = new ArrayList<>(List.of(
                Launcher.path().toString(),
                "replan",
                season,
                "--plan",
                planned.toString(),
                "--rain",
                RAIN,
                "--steps",
                "50"));
        // ends before the optimising compiler would have paid
        Map<String, String> quick = Map.of("JAVA_TOOL_OPTIONS", "-XX:TieredStopAtLevel=1");
        long begun = System.nanoTime();
        assertThat(Launcher.result(Launcher.start(folder, quick, command)).exitCode())
                .isZero();
        long wholeMs = msSince(begun);
        Random random = new Random(5);
        int cutShort = 0;
        for (int kill = 0; kill < KILLS; kill++) {
            begun = System.nanoTime();
            Process process = Launcher.start(folder, quick, command);
            if (process.waitFor(wholeMs / 3 + random.nextLong(wholeMs), TimeUnit.MILLISECONDS)) {
                // the machine may have more time for it than before
                wholeMs = msSince(begun);
            } else {
                cutShort++;
            }
            process.descendants().forEach(ProcessHandle::destroyForcibly);
            process.destroyForcibly().waitFor();

            assertThat(read(planned.resolve("plan.json")).planters()).isNotEmpty();
            try (Stream<Path> kept = Files.list(planned.resolve("plans"))) {
                for (Path file :
                        kept.filter(path -> path.toString().endsWith(".json")).toList()) {
                    assertThat(read(file).planters()).isNotEmpty();
                }
            }
        }
        assertThat(cutShort).isGreaterThan(KILLS / 3);
    }

    private static long msSince(long beginNs) {
        return (System.nanoTime() - beginNs) / 1_000_000;
    }

    private Launcher.Result replan(String... options) throws Exception {
        List<String> arguments = new ArrayList<>(List.of("replan", season, "--plan", planned.toString()));
        arguments.addAll(List.of(options));
        return InProcess.run(arguments.toArray(String[]::new));
    }

    private Plan read(Path file) throws Exception {
        Plan plan = PlanFile.read(file);
        Season whole = ((Reading.Valid) SeasonFiles.read(Path.of(season), List.of())).season();
        Season madeFor = plan.start().map(start -> start.remaining(whole)).orElse(whole);
        assertThat(Audit.check(madeFor, plan)).isEmpty();
        return plan;
    }
}

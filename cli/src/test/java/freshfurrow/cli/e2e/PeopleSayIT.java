package freshfurrow.cli.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanFile;
import freshfurrow.model.progress.Promises;
import freshfurrow.model.season.Standing;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What people say of a season under way, from the log through every door that shows it. */
final class PeopleSayIT {
    private static final LocalDate TUESDAY = LocalDate.of(2027, 4, 20);

    @TempDir
    private Path folder = Path.of("");

    private String season = "";
    private String planned = "";

    @BeforeEach
    void plan() throws Exception {
        season = SeasonOnDisk.in(folder).toString();
        planned = folder.resolve("plan").toString();
        run("plan", season, "--steps", "300", "--no-page");
    }

    @Test
    void aFieldThatIsFoundUnfitIsPlantedOnceItIsFit() throws Exception {
        String next = firstFieldFrom(TUESDAY);

        assertThat(run("log", season, "unfit", next, "--until", "2027-04-23", "--at", "2027-04-20T06:00"))
                .contains(next, "unfit until Fri 2027-04-23 00:00", "open from Fri 2027-04-23 00:00 on");
        String replanned = run("replan", season, "--plan", planned, "--now", "2027-04-20T06:00", "--steps", "300");

        assertThat(replanned).containsPattern(next + " .*too wet until 2027-04-23");
        assertThat(begun(next)).isAfterOrEqualTo(LocalDate.of(2027, 4, 23));
        assertThat(run("audit", season, planned)).startsWith("No problems found.");
        assertThat(run("why", planned, next))
                .contains("It was found unfit on Tue 2027-04-20 6:00 am, until Fri 2027-04-23");
        assertThat(run("trace", season, "--field", next)).contains("unfit until Fri 2027-04-23 00:00 (entry 1)");
        assertThat(Files.readString(folder.resolve("plan/plan.html"))).contains("found unfit on Tue 2027-04-20");

        run("log", season, "void", "1", "--because", "that was the neighbour's", "--at", "2027-04-20T07:00");
        run("replan", season, "--plan", planned, "--now", "2027-04-20T06:00", "--steps", "300");

        assertThat(begun(next)).isBefore(LocalDate.of(2027, 4, 23));
        assertThat(run("why", planned, next)).doesNotContain("found unfit");
    }

    @Test
    void fieldsThatAreFoundFitAreOpenOverTheRain() throws Exception {
        run("log", season, "rain", "2in", "--at", "2027-04-20T05:00");
        run("replan", season, "--plan", planned, "--now", "2027-04-20T06:00", "--steps", "100");
        assertThat(begun("N40")).isAfterOrEqualTo(LocalDate.of(2027, 4, 24));

        run("log", season, "fit", "N40", "W60", "--at", "2027-04-21T08:00");
        run("replan", season, "--plan", planned, "--now", "2027-04-21T08:00", "--steps", "300");

        assertThat(List.of(begun("N40"), begun("W60"))).contains(LocalDate.of(2027, 4, 21));
        assertThat(begun("S80")).isAfterOrEqualTo(LocalDate.of(2027, 4, 24));
        assertThat(run("audit", season, planned)).startsWith("No problems found.");
    }

    @Test
    void aMachineThatIsBehindBeginsThatMuchLater() throws Exception {
        assertThat(run("log", season, "behind", "P1", "50min", "--at", "2027-04-20T10:00"))
                .contains("P1 50 min behind the plan");

        String replanned = run("replan", season, "--plan", planned, "--now", "2027-04-20T10:00", "--steps", "100");

        assertThat(replanned).contains("P1 is behind: it begins after 50 min more of its hours.");
        assertThat(run("audit", season, planned)).startsWith("No problems found.");
        String again = run("replan", season, "--plan", planned, "--now", "2027-04-20T14:00", "--steps", "100");
        assertThat(again).doesNotContain("is behind");
    }

    @Test
    void whatWasDoneAsPlannedIsLoggedAtOnceAndOnlyOnce() throws Exception {
        String added = run("log", season, "asplanned", "--until", "2027-04-20T13:00");

        assertThat(added).contains("drawn at well", "batch by R1 at ", " of windrow, for load L0001", "planted ");
        assertThat(run("replan", season, "--plan", planned, "--now", "2027-04-20T13:00", "--steps", "100"))
                .contains(" logged, 0.0 ac assumed done as planned)");
        assertThat(run("audit", season, planned)).startsWith("No problems found.");
        assertThat(run("log", season, "asplanned", "--until", "2027-04-20T13:00"))
                .startsWith("Nothing to add: ");

        String next = promises().keySet().iterator().next();
        String later = run("log", season, "asplanned", "--until", "2027-04-23T20:00", "--except", next + ",R1");
        assertThat(later).contains("planted ").doesNotContain("planted " + next, " by R1");
    }

    @Test
    void nothingIsLoggedAsPlannedOfTheFutureOrOfWhatTheSeasonDoesNotHave() throws Exception {
        Launcher.Result future =
                InProcess.run("log", season, "--now", "2027-04-21T12:00", "asplanned", "--until", "2027-04-21T18:00");
        Launcher.Result unknown =
                InProcess.run("log", season, "asplanned", "--until", "2027-04-21T18:00", "--except", "X1");

        assertThat(future.err()).contains("--until 2027-04-21T18:00 is in the future: it is 2027-04-21T12:00 now");
        assertThat(unknown.err()).contains("--except: the season has no field and no machine X1; it has P1, R1, N40");
        assertThat(List.of(future.exitCode(), unknown.exitCode())).containsOnly(1);
        assertThat(folder.resolve("log.csv")).doesNotExist();
    }

    @Test
    void aPromiseIsKeptAndShown() throws Exception {
        fix("fixed: {N40: {planter: P1, on: 2027-04-27}}");
        String fixed = folder.resolve("fixed").toString();

        assertThat(run("plan", season, "--steps", "300", "--out", fixed)).doesNotContain("not to be kept");

        assertThat(run("why", fixed, "N40"))
                .contains("Planted by P1 Tue 2027-04-27", "Fixed to P1, to start on Tue 2027-04-27");
        assertThat(run("audit", season, fixed)).startsWith("No problems found.");
        assertThat(run("day", fixed, "2027-04-27")).contains("in N40 North (fixed), load ");
        run("sheets", fixed, "--out", folder.resolve("sheets.html").toString());
        assertThat(Files.readString(folder.resolve("sheets.html"))).contains(" (fixed), load ");
        assertThat(Files.readString(folder.resolve("fixed/plan.html")))
                .contains("fixed to P1, to start on Tue 2027-04-27");
    }

    @Test
    void aPromiseThatCannotBeKeptIsSaidSoWithItsReason() throws Exception {
        fix("fixed: {N40: {on: 2027-04-27}}");
        String fixed = folder.resolve("fixed").toString();
        run("plan", season, "--steps", "300", "--out", fixed, "--no-page");

        String replanned = run("replan", season, "--plan", fixed, "--rain", "2027-04-26T20:00=1.5in", "--steps", "300");

        assertThat(replanned)
                .contains("Fixed, and not to be kept", "N40 fixed to start on Tue 2027-04-27, starts on ")
                .containsPattern("N40 .*: its ground is too wet until ");
        assertThat(run("audit", season, fixed)).startsWith("No problems found.");
        assertThat(run("why", fixed, "N40")).contains("Fixed to start on Tue 2027-04-27, starts on ");
    }

    @Test
    void aPromiseThatNoPlanCouldKeepIsAProblemOfTheSeason() throws Exception {
        fix("fixed: {N40: {planter: P2, on: 2027-04-25}}");

        assertThat(InProcess.run("check", season).err())
                .contains("fixed.N40.planter: there is no planter P2; did you mean P1?")
                .contains("fixed.N40.on: no machine works on 2027-04-25; choose an open day, or open this one")
                .hasLineCount(2);
    }

    private void fix(String fixed) throws Exception {
        Path file = folder.resolve("season.yaml");
        Files.writeString(file, Files.readString(file) + fixed + "\n");
    }

    @Test
    void ofSeveralFieldsAllAreLoggedOrNone() throws Exception {
        Launcher.Result wrong = InProcess.run("log", season, "fit", "N40", "N41", "--at", "2027-04-21T08:00");

        assertThat(wrong.exitCode()).isEqualTo(1);
        assertThat(wrong.err())
                .contains("new line 2 of 2: place: there is no field N41; did you mean N40?")
                .hasLineCount(1);
        assertThat(folder.resolve("log.csv")).doesNotExist();
    }

    private String firstFieldFrom(LocalDate day) throws Exception {
        return promises().entrySet().stream()
                .filter(promise -> promise.getValue().day().equals(day))
                .findFirst()
                .orElseThrow()
                .getKey();
    }

    private LocalDate begun(String field) throws Exception {
        return promises().get(field).day();
    }

    private Map<String, Standing.Promise> promises() throws Exception {
        Plan plan = PlanFile.read(folder.resolve("plan/plan.json"));
        return Promises.of(
                plan,
                plan.start()
                        .map(start -> start.now())
                        .orElse(LocalDate.of(2027, 4, 19).atStartOfDay()),
                100);
    }

    private static String run(String... arguments) throws Exception {
        Launcher.Result result = InProcess.run(arguments);
        assertThat(result.err()).isEmpty();
        assertThat(result.exitCode()).isZero();
        return result.out();
    }
}

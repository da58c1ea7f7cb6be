package freshfurrow.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanFile;
import freshfurrow.model.read.Reading;
import freshfurrow.model.read.SeasonFiles;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

/** What is the user's stays, whatever a command is told to write and wherever. */
final class NothingLostTest {
    private static final Path SCENARIO = Path.of("..", "scenarios", "first-season");

    @TempDir
    private Path folder = Path.of("");

    private Path season = Path.of("");
    private Path plan = Path.of("");

    private record Result(int exitCode, String out, String err) {}

    @BeforeEach
    void planASeason() throws IOException {
        season = Files.createDirectory(folder.resolve("season"));
        try (var files = Files.list(SCENARIO)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, season.resolve(file.getFileName().toString()));
            }
        }
        plan = Files.createDirectory(season.resolve("plan"));
        Files.writeString(plan.resolve("plan.json"), PlanFile.toJson(unsearched()));
    }

    /** A plan that takes no time: all fields by the first planter, as they stand in the file. */
    private Plan unsearched() {
        Reading.Valid read = (Reading.Valid) SeasonFiles.read(season, List.of());
        Season whole = read.season();
        List<List<String>> lists = new ArrayList<>();
        lists.add(whole.fields().stream().map(Field::id).toList());
        while (lists.size() < whole.applicators().size()) {
            lists.add(List.of());
        }
        return PlanRecorder.record(
                CompiledSeason.of(whole), lists, Plan.SeasonSource.of(whole, read.file(), read.sha256()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"plan.html", "plan.json"})
    void aReplanIntoAnotherFolderReplacesNothingUnasked(String name) throws IOException {
        Path other = Files.createDirectory(folder.resolve("other"));
        Path mine = Files.writeString(other.resolve(name), "mine");

        Result refused = replan("--out", other);

        assertThat(refused.exitCode()).isEqualTo(1);
        assertThat(refused.err()).contains(mine + ": exists already", "--force").hasLineCount(1);
        assertThat(names(other)).containsExactly(name);
        assertThat(mine).hasContent("mine");

        assertThat(replan("--out", other, "--force").exitCode()).isZero();
        assertThat(names(other)).containsExactly("plan.html", "plan.json", "plans");
    }

    @ParameterizedTest
    @ValueSource(strings = {"plan.html", "plan.json", "plans"})
    void aReplanFollowsNoLinkThatLeadsElsewhere(String name) throws IOException {
        Path other = Files.createDirectory(folder.resolve("other"));
        Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
        Path mine = name.equals("plans") ? elsewhere : Files.writeString(elsewhere.resolve("notes"), "mine");
        Files.createSymbolicLink(other.resolve(name), mine);

        Result refused = replan("--out", other, "--force");

        assertThat(refused.exitCode()).isEqualTo(1);
        assertThat(refused.err())
                .contains(name + ": is a link, and links are not followed")
                .hasLineCount(1);
        assertThat(names(other)).containsExactly(name);
        assertThat(names(elsewhere)).hasSizeLessThan(2).doesNotContain("001.json");
    }

    @Test
    void aReplanInTheFolderOfThePlanReplacesItsOwnPageOnly() throws IOException {
        assertThat(replan().exitCode()).isZero();
        assertThat(replan().exitCode()).isZero();
        Path page = Files.writeString(plan.resolve("plan.html"), "<!doctype html><title>Mine</title>");

        Result refused = replan();

        assertThat(refused.exitCode()).isEqualTo(1);
        assertThat(refused.err()).contains("plan.html: exists already");
        assertThat(page).hasContent("<!doctype html><title>Mine</title>");
        assertThat(replan("--no-page").exitCode()).isZero();
        assertThat(names(plan.resolve("plans"))).containsExactly("001.json", "002.json", "003.json", "004.json");
    }

    @ParameterizedTest
    @ValueSource(strings = {"rw-------", "r--------"})
    void aPlanAndALogKeepTheirModes(String mode) throws IOException {
        Path file = plan.resolve("plan.json");
        Path log = Files.createFile(season.resolve("log.csv"));
        setMode(file, mode);
        setMode(log, mode);

        assertThat(note(log).exitCode()).isZero();
        assertThat(replan().exitCode()).isZero();

        assertThat(mode(file)).isEqualTo(mode);
        assertThat(mode(log)).isEqualTo(mode);
        assertThat(names(season)).doesNotContain(".log.csv.lock", ".freshfurrow.lock");
    }

    @Test
    void anExportOfWhichOneFileCannotBeWrittenWritesNone() throws IOException {
        assertThat(run("export", plan).exitCode()).isZero();
        Files.delete(plan.resolve("batches.csv"));
        Files.createDirectory(plan.resolve("batches.csv"));
        for (String name : List.of("fields.csv", "loads.csv")) {
            Files.writeString(plan.resolve(name), "mine");
        }

        Result export = run("export", plan, "--force");

        assertThat(export.exitCode()).isEqualTo(1);
        assertThat(export.err())
                .contains("batches.csv: is not an ordinary file")
                .hasLineCount(1);
        assertThat(plan.resolve("fields.csv")).hasContent("mine");
        assertThat(plan.resolve("loads.csv")).hasContent("mine");
    }

    @Test
    @Timeout(60)
    void aPipeIsNeitherReplacedNorWaitedFor() throws Exception {
        Path pipe = pipe(plan.resolve("plan.ics"));
        assertThat(run("export", plan, "--force").err()).contains("plan.ics: is not an ordinary file");
        assertThat(run("page", plan, "--out", pipe, "--force").err()).contains("is not an ordinary file");
        assertThat(run("sheets", plan, "--out", pipe, "--force").err()).contains("is not an ordinary file");
        assertThat(note(pipe).err()).contains("is not an ordinary file").hasLineCount(1);
        assertThat(names(plan)).containsExactly("plan.ics", "plan.json");
    }

    @Test
    void aRefusedLogLeavesNothingWhereItPoints() throws IOException {
        Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
        Path target = Files.writeString(elsewhere.resolve("table.csv"), "a,b\n1,2\n");
        Path link = Files.createSymbolicLink(folder.resolve("log.csv"), target);

        assertThat(note(target).exitCode()).isEqualTo(1);
        assertThat(note(link).err()).contains("log.csv: is a link, and links are not followed, so nothing was added");
        assertThat(note(elsewhere).exitCode()).isEqualTo(1);
        assertThat(note(folder.resolve("none").resolve("log.csv")).exitCode()).isEqualTo(1);

        assertThat(names(elsewhere)).containsExactly("table.csv");
        assertThat(names(folder)).containsExactly("elsewhere", "log.csv", "season");
    }

    @Test
    void aLogWithALoadThatNothingKnowsTakesNoFurtherLines() throws IOException {
        Path log = season.resolve("log.csv");
        String wrong = """
                entry,at,fact,place,machine,load,lot,amount,until,voids,note
                1,2027-04-23T11:00,planted,N80,,L9999,,1 ac,,,
                """;
        Files.writeString(log, wrong);

        Result added = note(log);

        assertThat(added.exitCode()).isEqualTo(1);
        assertThat(added.err())
                .contains("log.csv:2: load: there is no load L9999, neither in a plan nor of a batch in the log");
        assertThat(log).hasContent(wrong);
    }

    @Test
    void aLineOfWorkAtTheMidnightThatEndsTheSeasonIsPlannedOn() throws IOException {
        Files.writeString(season.resolve("log.csv"), """
                entry,at,fact,place,machine,load,lot,amount,until,voids,note
                1,2027-05-29T24:00,planted,N80,,,,5 ac,,,
                """);

        assertThat(run("replan", season, "--plan", plan, "--steps", "0", "--no-page")
                        .err())
                .isEmpty();
        assertThat(run("audit", season, plan).exitCode()).isZero();
    }

    private Result replan(Object... more) {
        Object[] words = {"replan", season, "--plan", plan, "--now", "2027-04-23T12:00", "--steps", "0"};
        Object[] all = Arrays.copyOf(words, words.length + more.length);
        System.arraycopy(more, 0, all, words.length, more.length);
        return run(all);
    }

    private Result note(Path log) {
        return run("log", season, "--log", log, "note", "sun", "--at", "2027-04-23T12:00");
    }

    private static Path pipe(Path file) throws IOException, InterruptedException {
        Process made = new ProcessBuilder("mkfifo", file.toString()).start();
        assertThat(made.waitFor()).isZero();
        return file;
    }

    private static Result run(Object... words) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        CommandLine command =
                Freshfurrow.commandLine().setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true));
        int exitCode =
                command.execute(Arrays.stream(words).map(Object::toString).toArray(String[]::new));
        return new Result(exitCode, out.toString(), err.toString());
    }

    private static void setMode(Path file, String mode) throws IOException {
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString(mode));
    }

    private static String mode(Path file) throws IOException {
        return PosixFilePermissions.toString(Files.getPosixFilePermissions(file));
    }

    private static List<String> names(Path folder) {
        String[] names = folder.toFile().list();
        return names == null ? List.of() : Arrays.stream(names).sorted().toList();
    }
}

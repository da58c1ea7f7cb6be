package freshfurrow.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import picocli.CommandLine;

/** A season of eight fields with a plan of what is left of it, of which every command can be given a changed one. */
final class StrangersPlan {
    private static final Duration LONGEST = Duration.ofSeconds(60);
    private static final Pattern UNSEEN = Pattern.compile("[\\p{Cc}\\p{Cf}\\p{Zl}\\p{Zp}\\p{Cs}&&[^\\n]]");
    private static final Path SCENARIO = Path.of("..", "scenarios", "first-season");

    private final Path folder;
    private final String plan;

    private StrangersPlan(Path folder, String plan) {
        this.folder = folder;
        this.plan = plan;
    }

    /** Made in an empty folder: tanks are not empty where it begins, rain has fallen and a rig was down. */
    static StrangersPlan in(Path folder) throws IOException {
        for (String name : List.of("season.yaml", "fields.csv")) {
            Files.copy(SCENARIO.resolve(name), folder.resolve(name));
        }
        Files.writeString(
                folder.resolve("log.csv"), "entry,at,fact,place,amount\n1,2027-04-22T09:00,planted,N80,1 ac\n");
        String season = folder.toString();
        String out = folder.resolve("plan").toString();
        assertThat(run("plan", season, "--steps", "20", "--no-page", "--out", out).code)
                .isZero();
        Run replanned = run(
                "replan",
                season,
                "--plan",
                out,
                "--now",
                "2027-04-23T10:07",
                "--rain",
                "2027-04-22T10:00=0.05in",
                "--down",
                "R1=2027-04-26T00:00/2027-04-26T12:00",
                "--steps",
                "0",
                "--no-page");
        assertThat(replanned.code).as(replanned.text).isZero();
        return new StrangersPlan(
                folder, withoutChecksum(Files.readString(folder.resolve("plan").resolve("plan.json"))));
    }

    /** Otherwise every change in the start would be refused for the same reason. */
    private static String withoutChecksum(String plan) {
        String without = plan.replaceFirst(",\\s*\"sha256\": \"[0-9a-f]{64}\"(?=\\s*})", "");
        assertThat(without).hasSizeLessThan(plan.length());
        return without;
    }

    String plan() {
        return plan;
    }

    /** What came of a command. */
    record Run(int code, String text) {}

    /** What the command {@code page} answers to a changed plan of the season. */
    Run page(String changed) throws IOException {
        Path file = Files.writeString(folder.resolve("plan").resolve("strange.json"), changed);
        Path out = folder.resolve("page.html");
        Run run = run("page", file.toString(), "--out", out.toString(), "--force");
        Files.delete(file);
        return run;
    }

    /** Gives every command that reads a plan this one; what is wrong with their answers. */
    List<String> complaints(String changed) throws IOException {
        Path stranger = folder.resolve("stranger");
        Path file = Files.createDirectories(stranger).resolve("plan.json");
        Files.writeString(file, changed);
        List<String> complaints = new ArrayList<>();
        for (List<String> command : commands(file, folder.resolve("out"))) {
            Run run = assertTimeoutPreemptively(LONGEST, () -> run(command.toArray(String[]::new)), command::toString);
            complaint(run).ifPresent(what -> complaints.add(command + ": " + what + "\n" + run.text));
        }
        delete(stranger);
        delete(folder.resolve("out"));
        return complaints;
    }

    private List<List<String>> commands(Path file, Path out) {
        String plan = file.toString();
        String season = folder.toString();
        return List.of(
                List.of("day", plan, "2027-04-24"),
                List.of("sheets", plan, "--out", out.resolve("sheets.html").toString()),
                List.of(
                        "page",
                        plan,
                        "--season",
                        season,
                        "--out",
                        out.resolve("plan.html").toString()),
                List.of("export", plan, "--season", season, "--out", out.toString()),
                List.of("why", plan, "W95", "--season", season),
                List.of("audit", season, plan),
                List.of("trace", season, "--field", "N80", "--plan", plan),
                List.of("log", season, "list", "--plan", plan),
                List.of(
                        "replan",
                        season,
                        "--plan",
                        plan,
                        "--now",
                        "2027-04-24T12:00",
                        "--steps",
                        "0",
                        "--out",
                        out.resolve("replan").toString()));
    }

    private static Optional<String> complaint(Run run) {
        if (run.code < 0 || run.code > 2) {
            return Optional.of("exit code " + run.code);
        }
        if (run.code > 0 && run.text.isBlank()) {
            return Optional.of("fails without a word");
        }
        return Stream.of("An error of the program", "\tat ", "Exception", "more memory")
                .filter(run.text::contains)
                .findFirst()
                .or(() -> UNSEEN.matcher(run.text)
                        .results()
                        .map(found -> "a character that cannot be seen")
                        .findFirst())
                .or(() -> run.text
                        .lines()
                        .filter(line -> line.length() > 1_000)
                        .map(line -> "an endless line")
                        .findFirst());
    }

    private static Run run(String... args) {
        StringWriter text = new StringWriter();
        PrintWriter writer = new PrintWriter(text);
        CommandLine commandLine = Freshfurrow.commandLine(args).setOut(writer).setErr(writer);
        int code = commandLine.execute(args);
        return new Run(code, text.toString());
    }

    private static void delete(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}

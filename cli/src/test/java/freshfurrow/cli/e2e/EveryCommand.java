package freshfurrow.cli.e2e;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** Every command, one after the other, on a season of its own. */
final class EveryCommand {
    private static final String SEASON = "season";
    private static final String RECORD = Launcher.scenario("weather-spring");

    private static final List<String> LINES = List.of(
            "check season",
            "plan season --steps 50",
            "seasons season --steps 50",
            "log season planted N40 10ac --at 2027-04-21T15:10",
            "log season batch R1 --lot windrow --compost 30lb --load L0001 --at 2027-04-21T15:20",
            "log season unfit S80 --until 2027-04-24 --at 2027-04-21T15:30",
            "log season behind R1 20min --at 2027-04-21T15:40",
            "log season asplanned --until 2027-04-21T16:00 --except N40",
            "log season transfer R1 300gal --load L0001 --took 6min --at 2027-04-21T15:50",
            "log season drive R1 well N40 --took 7min --at 2027-04-21T15:55",
            "log season list",
            "learn season --out season/learned.yaml",
            "replan season --plan season/plan --now 2027-04-22T06:00 --rain 2027-04-22T06:00=0.8in --steps 50",
            "replan season --plan season/plan --now 2027-04-23T06:00 --steps 50",
            "day season/plan 2027-04-23",
            "audit season season/plan",
            "page season/plan --out season/page.html",
            "why season/plan S80",
            "sheets season/plan",
            "export season/plan",
            "trace season --field N40",
            "mix season --acres 21 --start 07:00",
            "calibrate season --planter P1",
            "weather record",
            "compare record --springs 1 --steps 0 --out season/compared",
            "supply record --springs 1-3 --steps 0",
            "begin season/begun --units us",
            "import season/begun/fields.csv --out season/imported.csv --units us",
            "check season/begun",
            "desk season --no-browser",
            "completion",
            "--help",
            "plan season --help",
            "check season/missing",
            "plann season");

    /** How long it took is another time each time. */
    private static final String TOOK = "Took .*\\R";

    private EveryCommand() {}

    /** Runs a command line to its end, and tells all that it has printed whenever that is more. */
    @FunctionalInterface
    interface Runner {
        Launcher.Result run(Consumer<String> printed, String... arguments) throws Exception;
    }

    /** The first words of the command lines. */
    static List<String> names() {
        return LINES.stream().map(line -> line.split(" ", 2)[0]).toList();
    }

    /** What each command prints, with its exit code, and what each file holds that they leave. */
    static Map<String, String> printedAndWritten(Runner runner, Path home) throws Exception {
        Path season = SeasonOnDisk.in(Files.createDirectories(home.resolve(SEASON)));
        Map<String, String> everything = new TreeMap<>();
        for (String line : LINES) {
            Launcher.Result result =
                    runner.run(line.startsWith("desk") ? new DeskClosed() : all -> {}, words(line, season));
            String printed = result.out() + "exit code " + result.exitCode() + "\n" + result.err();
            everything.put(
                    "$ " + line,
                    DeskClosed.withoutLinks(printed.replace(home.toString(), "").replaceAll(TOOK, "")));
        }
        try (Stream<Path> files = Files.walk(home)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                everything.put(home.relativize(file).toString(), Files.readString(file));
            }
        }
        return everything;
    }

    private static String[] words(String line, Path season) {
        return Arrays.stream(line.split(" ", -1))
                .map(word ->
                        word.equals("record") ? RECORD : word.replaceFirst("^" + SEASON + "\\b", season.toString()))
                .toArray(String[]::new);
    }
}

package freshfurrow.cli.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.command.Freshfurrow;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The language of the machine changes nothing that is printed or written. */
final class LocaleIT {
    private static final List<String> COMMANDS = List.of(
            "check season",
            "plan season --steps 50",
            "log season planted N40 10ac --at 2027-04-21T15:10",
            "log season batch R1 --lot windrow --compost 30lb --load L0001 --at 2027-04-21T15:20",
            "log season list",
            "replan season --plan season/plan --now 2027-04-22T06:00 --rain 2027-04-22T06:00=0.8in --steps 50",
            "replan season --plan season/plan --now 2027-04-23T06:00 --steps 50",
            "day season/plan 2027-04-23",
            "audit season season/plan",
            "why season/plan S80",
            "sheets season/plan",
            "export season/plan",
            "trace season --field N40",
            "mix season --acres 21 --start 07:00",
            "calibrate season --planter P1",
            "plan season --help");

    /** How long it took is another time each time. */
    private static final String TOOK = "Took .*\\R";

    private final Locale usual = Locale.getDefault();

    @TempDir
    private Path folder = Path.of("");

    @AfterEach
    void usualLanguage() {
        Locale.setDefault(usual);
    }

    @ParameterizedTest
    @ValueSource(strings = {"fa-IR", "bn-BD", "my-MM", "ckb-IQ", "ar-EG", "tr-TR"})
    void everyCommandPrintsAndWritesTheSameInEveryLanguage(String language) throws IOException {
        Map<String, String> expected = everythingIn(Locale.ROOT, folder.resolve("root"));

        Map<String, String> actual = everythingIn(Locale.forLanguageTag(language), folder.resolve(language));
        assertThat(actual).containsOnlyKeys(expected.keySet());
        expected.forEach((what, text) -> assertThat(actual.get(what)).as(what).isEqualTo(text));
    }

    @Test
    void pathsAndNotesBeyondAsciiWorkWhereTheMachineHasNoLanguage() throws Exception {
        Path season = SeasonOnDisk.in(Files.createDirectory(folder.resolve("Frühjahr 春")));

        Launcher.Result logged =
                inPlainC("log", season.toString(), "note", "Bö am Südhang, 雨", "--at", "2027-04-21T10:00");
        Launcher.Result listed = inPlainC("log", season.toString(), "list");

        assertThat(logged.exitCode()).isZero();
        assertThat(listed.out()).contains("Bö am Südhang, 雨");
        assertThat(season.resolve("log.csv")).content(StandardCharsets.UTF_8).contains("Bö am Südhang, 雨");
    }

    private static Launcher.Result inPlainC(String... arguments) throws Exception {
        return Launcher.result(Launcher.start(
                Launcher.projectFolder(),
                Map.of("LC_ALL", "C"),
                Stream.concat(Stream.of(Launcher.path().toString()), Stream.of(arguments))
                        .toList()));
    }

    /** What each command prints, and what each file holds. */
    private static Map<String, String> everythingIn(Locale locale, Path home) throws IOException {
        Locale.setDefault(locale);
        Path season = SeasonOnDisk.in(Files.createDirectories(home.resolve("season")));
        Map<String, String> everything = new TreeMap<>();
        for (String command : COMMANDS) {
            everything.put(
                    "$ " + command,
                    printed(command.replace("season", season.toString()).split(" "))
                            .replace(home.toString(), "")
                            .replaceAll(TOOK, ""));
        }
        try (Stream<Path> files = Files.walk(home)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                everything.put(home.relativize(file).toString(), Files.readString(file));
            }
        }
        return everything;
    }

    private static String printed(String... arguments) {
        PrintStream usual = System.out;
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        System.setOut(new PrintStream(bytes, true, StandardCharsets.UTF_8));
        try {
            int code = Freshfurrow.run(arguments);
            return bytes.toString(StandardCharsets.UTF_8) + code;
        } finally {
            System.setOut(usual);
        }
    }
}

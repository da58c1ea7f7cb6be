package freshfurrow.cli.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The language of the machine changes nothing that is printed or written. It is that of all tests at once, so these run by themselves. */
@Isolated
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
final class LocaleIT {
    private final Locale usual = Locale.getDefault();
    private Map<String, String> expected = Map.of();

    @TempDir
    private Path folder = Path.of("");

    @BeforeAll
    void inNoLanguage(@TempDir Path root) throws Exception {
        expected = everythingIn(Locale.ROOT, root);
    }

    @AfterEach
    void usualLanguage() {
        Locale.setDefault(usual);
    }

    @ParameterizedTest
    @ValueSource(strings = {"fa-IR", "bn-BD", "my-MM", "ckb-IQ", "ar-EG", "tr-TR"})
    void everyCommandPrintsAndWritesTheSameInEveryLanguage(String language) throws Exception {
        Map<String, String> actual = everythingIn(Locale.forLanguageTag(language), folder);

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

    private static Map<String, String> everythingIn(Locale locale, Path home) throws Exception {
        Locale.setDefault(locale);
        return EveryCommand.printedAndWritten(InProcess::run, home);
    }
}

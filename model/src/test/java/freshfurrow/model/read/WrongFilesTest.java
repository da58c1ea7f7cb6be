package freshfurrow.model.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that are not there, not text, not well-formed, too large, or not where they may be. */
final class WrongFilesTest {
    private static final String CHECK = "; check indentation, quotes, colons and brackets here and just above";

    @TempDir
    private Path folder = Path.of("");

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = '|', textBlock = """
                    ``                     | season.yaml: is empty; write key: value pairs into it
                    # only a comment       | season.yaml: is empty; write key: value pairs into it
                    just words             | season.yaml:1: is 'just words' where keys with values belong; write key: value pairs here
                    - a\\n- list           | season.yaml:1: is a list where keys with values belong; write key: value pairs here
                    season: &a {name: X}\\nagain: *a | season.yaml:1: season: uses a YAML anchor or alias; write the value out where it is used
                    season: &a X           | season.yaml:1: season: uses a YAML anchor or alias; write the value out where it is used
                    season: &a             | season.yaml:1: season: uses a YAML anchor or alias; write the value out where it is used
                    season: &a "X"         | season.yaml:1: season: uses a YAML anchor or alias; write the value out where it is used
                    season: &a []          | season.yaml:1: season: uses a YAML anchor or alias; write the value out where it is used
                    season: [&a X]         | season.yaml:1: season[1]: uses a YAML anchor or alias; write the value out where it is used
                    season: {&a name: X}   | season.yaml:1: season.name: uses a YAML anchor or alias; write the value out where it is used
                    &a season: X           | season.yaml:1: season: uses a YAML anchor or alias; write the value out where it is used
                    hours: 1\\n&a season: X | season.yaml:2: season: uses a YAML anchor or alias; write the value out where it is used
                    &a just words          | season.yaml:1: uses a YAML anchor or alias; write the value out where it is used
                    hours: &a 1\\nseason: *a | season.yaml:1: hours: uses a YAML anchor or alias; write the value out where it is used
                    season: !!map {}       | season.yaml:1: season: uses a YAML tag; write the value without the exclamation mark
                    season: !java.net.URL {} | season.yaml:1: season: uses a YAML tag; write the value without the exclamation mark
                    hours: 1\\nhours: 2    | season.yaml:2: hours: is repeated here, first in line 1; keep one of the two
                    hours: 1\\n---\\nhours: 2 | season.yaml:3: has more text after the end of its first document; keep one document per file
                    """)
    void aFileThatHoldsNoSeasonIsOneLine(String text, String line) {
        assertThat(new WrittenSeason(folder, text.replace("\\n", "\n")).problems())
                .containsExactly(line);
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = '|', textBlock = """
                    a: b: c           | season.yaml:1: is not well-formed: mapping values are not allowed here
                    a: "b             | season.yaml:1: is not well-formed: found unexpected end of stream
                    a: [1, 2          | season.yaml:1: is not well-formed: expected ',' or ']', but got <stream end>
                    \\ta: 1           | season.yaml:1: is not well-formed: found character '\\t(TAB)' that cannot start any token. (Do not use \\t(TAB) for indentation)
                    a: 1\\n b: 2      | season.yaml:2: is not well-formed: mapping values are not allowed here
                    `{"a": 1,, "b": 2}` | season.yaml:1: is not well-formed: expected the node content, but found ','
                    ? [a, b]\\n: c    | season.yaml:1: is not well-formed: a key must be one word
                    """)
    void yamlThatIsNotWellFormedIsOneLine(String text, String line) {
        assertThat(new WrittenSeason(folder, text.replace("\\n", "\n").replace("\\t", "\t") + "\n").problems())
                .containsExactly(line.replace("\\t", "\\t") + CHECK);
    }

    @Test
    void deepNestingIsOneLine() {
        assertThat(new WrittenSeason(folder, "a: " + "[".repeat(5000)).problems())
                .containsExactly("season.yaml: nests deeper than 20 levels; a season needs no more than a few levels;"
                        + " check the brackets and the indentation");
    }

    /** Each level names the one before nine times: a billion words if it were written out. */
    @Test
    void aYamlBombIsOneLine() {
        StringBuilder bomb = new StringBuilder("a0: &a0 [lol, lol, lol]\n");
        for (int i = 1; i < 20; i++) {
            bomb.append("a" + i + ": &a" + i + " [" + ("*a" + (i - 1) + ", ").repeat(8) + "*a" + (i - 1) + "]\n");
        }
        assertThat(new WrittenSeason(folder, bomb.toString()).problems())
                .containsExactly(
                        "season.yaml:1: a0: uses a YAML anchor or alias; write the value out where it is used");
    }

    @Test
    void latin1IsNamedWithItsLine() throws IOException {
        Path file = folder.resolve("season.yaml");
        Files.write(
                file, WrittenSeason.RIGHT.replace("North forty", "Ma\u00efs").getBytes(StandardCharsets.ISO_8859_1));
        assertThat(WrittenSeason.problems(SeasonFiles.read(file, List.of())))
                .containsExactly("season.yaml:11: is not UTF-8 text here; save the file again as UTF-8");
    }

    @Test
    void aFileOfZeroBytesIsOneLine() throws IOException {
        Path file = Files.write(folder.resolve("season.yaml"), new byte[1000]);
        assertThat(WrittenSeason.problems(SeasonFiles.read(file, List.of())))
                .hasSize(1)
                .allMatch(line ->
                        line.startsWith("season.yaml:1: is not well-formed: special characters are not allowed"));
    }

    @Test
    void aFileOf50MebibytesIsRefusedUnread() throws IOException {
        Path file = folder.resolve("season.yaml");
        try (RandomAccessFile sparse = new RandomAccessFile(file.toFile(), "rw")) {
            sparse.setLength(50L << 20);
        }
        assertThat(WrittenSeason.problems(SeasonFiles.read(file, List.of())))
                .containsExactly("season.yaml: is 50 MiB, more than the 8 MiB that can be read; check that it is the"
                        + " right file; leave out what the season does not need");
    }

    @Test
    void aFileThatIsNotThereIsOneLine() {
        assertThat(WrittenSeason.problems(SeasonFiles.read(folder.resolve("none.yaml"), List.of())))
                .containsExactly("none.yaml: does not exist; check the name and the folder");
    }

    @Test
    void aFolderWithoutASeasonIsOneLine() {
        assertThat(WrittenSeason.problems(SeasonFiles.read(folder, List.of())))
                .containsExactly("season.yaml: does not exist; check the name and the folder");
    }

    @Test
    void aFolderWhereAFileBelongsIsOneLine() throws IOException {
        Files.createDirectory(folder.resolve("season.yaml"));
        assertThat(WrittenSeason.problems(SeasonFiles.read(folder, List.of())))
                .containsExactly("season.yaml: is a folder, not a file; name the file itself");
    }

    @Test
    void aFileThatMayNotBeReadIsOneLine() {
        WrittenSeason season = WrittenSeason.in(folder);
        season.problems();
        Path file = folder.resolve("season.yaml");
        assumeThat(file.toFile().setReadable(false) && !Files.isReadable(file)).isTrue();
        assertThat(WrittenSeason.problems(SeasonFiles.read(folder, List.of())))
                .containsExactly("season.yaml: may not be read; give yourself permission to read it");
    }

    @Test
    void aDeviceIsNoFile() {
        Path device = Path.of("/dev/zero");
        assumeThat(device).exists();
        assertThat(WrittenSeason.problems(SeasonFiles.read(device, List.of())))
                .containsExactly("zero: is not an ordinary file; name a file that holds text");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/etc/fields.csv", "../fields.csv", "sub/../../fields.csv", "../../../../etc/fields.csv"})
    void aPathThatLeadsOutOfTheFolderIsOneLine(String name) {
        String line =
                "'" + name + "' leads outside the season's folder; put the file beside the season file and name it"
                        + " without a path";
        assertThat(named(name).problems()).containsExactly("season.yaml:10: fields: " + line);
        assertThat(WrittenSeason.in(folder)
                        .with("roadFactor: 1.3", "matrix: " + name)
                        .problems())
                .containsExactly("season.yaml:40: travel.matrix: " + line);
    }

    @Test
    void aLinkThatLeadsOutOfTheFolderIsOneLine(@TempDir Path elsewhere) throws IOException {
        Path target = Files.writeString(elsewhere.resolve("fields.csv"), "id\n");
        Files.createSymbolicLink(folder.resolve("fields.csv"), target);
        Files.createSymbolicLink(folder.resolve("sub"), elsewhere);
        assertThat(named("fields.csv").problems())
                .containsExactly(
                        "season.yaml:10: fields: 'fields.csv' leads outside the season's folder; put the file beside"
                                + " the season file and name it without a path");
        assertThat(named("sub/fields.csv").problems())
                .containsExactly(
                        "season.yaml:10: fields: 'sub/fields.csv' leads outside the season's folder; put the file"
                                + " beside the season file and name it without a path");
    }

    @Test
    void aFileBelowTheFolderAndALinkWithinItAreRead() throws IOException {
        Path sub = Files.createDirectory(folder.resolve("sub"));
        Files.writeString(sub.resolve("fields.csv"), "id,area (ac),lat,lon,crop\nN40,40,41.02,-97.01,corn\n");
        Files.createSymbolicLink(folder.resolve("linked.csv"), sub.resolve("fields.csv"));
        assertThat(named("sub/fields.csv").problems()).isEmpty();
        assertThat(named("linked.csv").problems()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = '|', textBlock = """
                    none.csv      | season.yaml:10: fields: 'none.csv' does not exist; check the name and the folder
                    fields.xlsx   | season.yaml:10: fields: 'fields.xlsx' is not a file of fields; name a .csv or .geojson file
                    "a\\0.csv"    | season.yaml:10: fields: 'a?.csv' is not a file name; name a file beside this one
                    [fields.csv]  | season.yaml:10: fields: is a list where a file name or a map of fields belongs; write N40: {…}
                    """)
    void aNameOfNoFileOfFieldsIsOneLine(String name, String line) {
        assertThat(named(name).problems()).containsExactly(line);
    }

    private WrittenSeason named(String fields) {
        String text = WrittenSeason.RIGHT;
        int start = text.indexOf("fields:");
        return new WrittenSeason(
                folder,
                text.substring(0, start) + "fields: " + fields + "\n" + text.substring(text.indexOf("planters:")));
    }
}

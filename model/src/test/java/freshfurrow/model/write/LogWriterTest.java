package freshfurrow.model.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import freshfurrow.model.files.ObstructedFile;
import freshfurrow.model.log.Column;
import freshfurrow.model.log.LogContext;
import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.season.Season;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LogWriterTest {
    private static final Season SEASON = RandomSeasons.season(1);
    private static final String DAY = SEASON.first().toString();

    @TempDir
    Path folder;

    @Test
    void aNewLogHasAHeaderAndTheLineWithLineEndsOfRfc4180() throws IOException {
        add(note("08:00", "cold, \"foggy\""));

        assertThat(file())
                .content()
                .isEqualTo("\ufeffentry,at,fact,place,machine,load,lot,amount,until,took,voids,note\r\n" + "1," + DAY
                        + "T08:00,note,,,,,,,,,\"cold, \"\"foggy\"\"\"\r\n");
    }

    @Test
    void aLineGoesUnderTheColumnsThatAreThereWithTheirLineEnds() throws IOException {
        Files.writeString(file(), "note,fact,at,entry\nfog,note," + DAY + "T07:00,7");

        add(note("08:00", "sun"));

        assertThat(file())
                .content()
                .isEqualTo("note,fact,at,entry\nfog,note," + DAY + "T07:00,7\nsun,note," + DAY + "T08:00,8\n");
    }

    @Test
    void aVoidGoesUnderTheColumnOfALogOfBefore() throws IOException {
        String before = "entry,at,fact,amount,takesBack,note\n1," + DAY + "T07:00,rain,5 mm,,\n";
        Files.writeString(file(), before);

        add(Map.of(
                Column.AT, DAY + "T09:00",
                Column.FACT, "void",
                Column.VOIDS, "1",
                Column.NOTE, "misread"));

        assertThat(file()).content().isEqualTo(before + "2," + DAY + "T09:00,void,,1,misread\n");
    }

    @Test
    void aColumnThatIsNotThereIsNamed() throws IOException {
        String before = "note,fact,at,entry\n";
        Files.writeString(file(), before);

        assertThat(problems(Map.of(Column.AT, DAY + "T08:00", Column.FACT, "rain", Column.AMOUNT, "3 mm")))
                .containsExactly("log.csv:1: has no column amount; add ,amount at the end of the header row");
        assertThat(file()).content().isEqualTo(before);
    }

    @Test
    void aWrongLineIsRefusedAndTheLogIsAsItWas() throws IOException {
        add(note("08:00", "sun"));
        byte[] before = Files.readAllBytes(file());

        assertThat(problems(Map.of(Column.AT, DAY + "T09:00", Column.FACT, "rain", Column.AMOUNT, "3")))
                .containsExactly("the new line: amount: 3 has no unit; write a depth of rain like 20 mm");
        assertThat(Files.readAllBytes(file())).isEqualTo(before);
    }

    @Test
    void aLogThatIsWrongAlreadyIsNotAddedToUnlessThatPutsItRight() throws IOException {
        add(rain("08:00"));
        Files.writeString(file(), Files.readString(file()) + "2," + DAY + "T08:00,rain,,,,,5 mm,,,\r\n");

        assertThat(problems(note("09:00", "sun")))
                .containsExactly("log.csv:3: at: entry 1 says the same for the same time;"
                        + " leave this one out, correct its time, or void entry 1 first");
        add(Map.of(
                Column.AT, DAY + "T09:00",
                Column.FACT, "void",
                Column.VOIDS, "1",
                Column.NOTE, "misread"));
    }

    /** Each of 20,000 lines is looked at a few times, not each once for every other. */
    @Test
    void aLogOfManyWrongLinesIsToldOfOnceALine() throws IOException {
        StringBuilder log = new StringBuilder("entry,at,fact,amount\n");
        for (int line = 1; line <= 20_000; line++) {
            log.append("1,2027-04-23T10:00,rain,1in\n");
        }
        Files.writeString(file(), log);

        assertThat(problems(rain("12:00")))
                .hasSize(19_999)
                .contains("log.csv:20001: entry: another entry has the number 1; number this one 3");
    }

    @Test
    void aLogThatIsNoTableIsNotTouched() throws IOException {
        Files.writeString(file(), "a;b\n1;2\n");

        assertThat(problems(note("08:00", "sun")))
                .containsExactly(
                        "log.csv:1: is separated by semicolons; save it again with commas (and points in decimals)");
    }

    @Test
    void aLinkIsNotFollowedAndNothingIsLeftWhereItLeads() throws IOException {
        Path real = Files.createDirectory(folder.resolve("real")).resolve("season-log.csv");
        Files.createFile(real);
        Files.createSymbolicLink(file(), real);

        assertThatThrownBy(() -> add(note("08:00", "sun")))
                .isInstanceOf(ObstructedFile.class)
                .hasMessageContaining("is a link, and links are not followed");

        assertThat(real).isEmptyFile();
        assertThat(folder.toFile().list()).containsExactlyInAnyOrder("real", "log.csv");
        assertThat(real.getParent().toFile().list()).containsExactly("season-log.csv");
    }

    @ParameterizedTest
    @ValueSource(strings = {"rw-------", "r--------", "rw-rw----"})
    void theLogKeepsItsMode(String mode) throws IOException {
        Files.createFile(file());
        Files.setPosixFilePermissions(file(), PosixFilePermissions.fromString(mode));

        add(note("08:00", "sun"));

        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file())))
                .isEqualTo(mode);
    }

    @Test
    void aLineThatIsRefusedLeavesNothingBehind() throws IOException {
        assertThat(problems(Map.of(Column.AT, DAY + "T08:00", Column.FACT, "picnic")))
                .isNotEmpty();
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void whatAKilledWriterLeftIsSweptAway() throws IOException {
        Files.writeString(folder.resolve(".freshfurrow.0b9d0b9d-0b9d-0b9d-0b9d-0b9d0b9d0b9d.tmp"), "half a l");
        Files.writeString(folder.resolve("log.csv.tmp"), "somebody's own");

        add(note("08:00", "sun"));

        assertThat(folder.toFile().list()).containsExactlyInAnyOrder("log.csv", "log.csv.tmp");
    }

    @Test
    void manyWritersAtOnceLoseNoLine() throws Exception {
        int writers = 8;
        CountDownLatch start = new CountDownLatch(1);
        ExecutorService pool = Executors.newFixedThreadPool(writers);
        List<Future<LogWriting>> writings = IntStream.range(0, writers)
                .mapToObj(i -> pool.submit(() -> {
                    start.await();
                    return new LogWriter(file(), LogContext.of(SEASON)).add(List.of(note("08:00", "writer " + i)));
                }))
                .toList();
        start.countDown();
        for (Future<LogWriting> writing : writings) {
            assertThat(writing.get()).isInstanceOf(LogWriting.Added.class);
        }
        pool.shutdown();

        assertThat(Files.readAllLines(file())).hasSize(1 + writers);
    }

    private Path file() {
        return folder.resolve("log.csv");
    }

    private void add(Map<Column, String> cells) throws IOException {
        assertThat(new LogWriter(file(), LogContext.of(SEASON)).add(List.of(cells)))
                .isInstanceOf(LogWriting.Added.class);
    }

    private List<String> problems(Map<Column, String> cells) throws IOException {
        LogWriting writing = new LogWriter(file(), LogContext.of(SEASON)).add(List.of(cells));
        assertThat(writing).isInstanceOf(LogWriting.Refused.class);
        return ((LogWriting.Refused) writing)
                .problems().stream().map(Object::toString).toList();
    }

    private static Map<Column, String> note(String clock, String text) {
        return Map.of(Column.AT, DAY + "T" + clock, Column.FACT, "note", Column.NOTE, text);
    }

    private static Map<Column, String> rain(String clock) {
        return Map.of(Column.AT, DAY + "T" + clock, Column.FACT, "rain", Column.AMOUNT, "3 mm");
    }
}

package freshfurrow.model.write;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.log.Column;
import freshfurrow.model.log.Entry;
import freshfurrow.model.log.LogContext;
import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.read.LogReader;
import freshfurrow.model.read.LogReading;
import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.season.Season;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.lifecycle.AfterTry;
import net.jqwik.api.lifecycle.BeforeTry;

/** What holds for any facts that can follow one another. */
class LogRoundTripTest {
    private static final int MOST_FACTS = 12;

    private Path folder = Path.of("");
    private Path file = Path.of("");

    @BeforeTry
    void makeFolder() throws IOException {
        folder = Files.createTempDirectory("log");
        file = folder.resolve("log.csv");
    }

    @AfterTry
    void removeFolder() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path path : files.toList()) {
                Files.delete(path);
            }
        }
        Files.delete(folder);
    }

    @Property(tries = 30)
    void whatIsAddedIsReadBackTheSame(@ForAll long seed) throws IOException {
        Season season = RandomSeasons.season(seed);
        Random random = new Random(seed);
        beginInAnyOrderOfColumns(random);
        List<Entry> expected = addFacts(season, seed, 1 + random.nextInt(MOST_FACTS));

        assertThat(read(season).entries()).isEqualTo(expected);
    }

    @Property(tries = 30)
    void whatWasThereStaysByteForByte(@ForAll long seed) throws IOException {
        Season season = RandomSeasons.season(seed);
        addFacts(season, seed, 1 + new Random(seed).nextInt(MOST_FACTS));
        byte[] before = Files.readAllBytes(file);

        assertThat(writer(season).add(List.of(voiding(season, 1)))).isInstanceOf(LogWriting.Added.class);

        assertThat(Files.readAllBytes(file)).startsWith(before);
    }

    @Property(tries = 30)
    void takingBackRemovesExactlyOneEntry(@ForAll long seed) throws IOException {
        Season season = RandomSeasons.season(seed);
        int count = 1 + new Random(seed).nextInt(MOST_FACTS);
        List<Entry> expected = addFacts(season, seed, count);
        int wrong = 1 + new Random(seed + 1).nextInt(count);

        assertThat(writer(season).add(List.of(voiding(season, wrong)))).isInstanceOf(LogWriting.Added.class);

        expected.removeIf(entry -> entry.number() == wrong);
        assertThat(read(season).standing()).containsExactlyElementsOf(expected);
    }

    private static Map<Column, String> voiding(Season season, int number) {
        return Map.of(
                Column.AT,
                season.last().atTime(23, 0).toString(),
                Column.FACT,
                "void",
                Column.VOIDS,
                String.valueOf(number),
                Column.NOTE,
                "wrong");
    }

    private void beginInAnyOrderOfColumns(Random random) throws IOException {
        List<String> titles = new ArrayList<>(Column.titles());
        Collections.shuffle(titles, random);
        String header = String.join(",", titles);
        switch (random.nextInt(4)) {
            case 0 -> Files.writeString(file, header);
            case 1 -> Files.writeString(file, header + "\n\n");
            case 2 -> Files.writeString(file, "\ufeff" + header + "\r\n,,,\r\n");
            default -> {
                // none yet
            }
        }
    }

    private List<Entry> addFacts(Season season, long seed, int count) throws IOException {
        RandomFacts facts = new RandomFacts(season, seed);
        List<Entry> expected = new ArrayList<>();
        for (int number = 1; number <= count; number++) {
            RandomFacts.Written fact = facts.next();
            Entry entry = new Entry(number, fact.at(), fact.fact(), fact.took(), fact.note());
            expected.add(entry);
            LogWriting writing = writer(season).add(List.of(fact.cells()));
            assertThat(writing).isEqualTo(new LogWriting.Added(List.of(entry), new SeasonLog(expected)));
        }
        return expected;
    }

    private LogWriter writer(Season season) throws IOException {
        return new LogWriter(file, LogContext.of(season));
    }

    private SeasonLog read(Season season) {
        LogReading reading = LogReader.read(file, LogContext.of(season));
        assertThat(reading).isInstanceOf(LogReading.Valid.class);
        return ((LogReading.Valid) reading).log();
    }
}

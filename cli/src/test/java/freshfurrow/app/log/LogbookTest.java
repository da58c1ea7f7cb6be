package freshfurrow.app.log;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.app.input.GivenSeason;
import freshfurrow.app.input.SeasonClock;
import freshfurrow.app.refusal.InputRefusal;
import freshfurrow.app.refusal.LogRefusal;
import freshfurrow.app.refusal.Refusals;
import freshfurrow.app.refusal.SeasonPart;
import freshfurrow.model.files.Obstacle;
import freshfurrow.model.log.Column;
import freshfurrow.model.log.FactKind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class LogbookTest {
    private static final Path SCENARIO = Path.of("..", "scenarios", "first-season");
    private static final Map<Column, String> NOTE =
            Map.of(Column.FACT, FactKind.NOTE_ONLY.word(), Column.NOTE, "strainer torn");

    @TempDir
    private Path folder = Path.of("");

    @BeforeEach
    void copySeason() throws IOException {
        try (var files = Files.list(SCENARIO)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, folder.resolve(file.getFileName().toString()));
            }
        }
    }

    @Test
    void aLineWithoutATimeIsOfNow() {
        // noon in Chicago, on a day of the season
        AddedEntries added = logbook("2027-04-23T17:00:00Z").add(List.of(NOTE));

        assertThat(added.entries().get(0).number()).isEqualTo(1);
        assertThat(added.entries().get(0).at()).isEqualTo(LocalDateTime.of(2027, 4, 23, 12, 0));
        assertThat(logbook("2027-04-23T17:00:00Z").list().log()).isEqualTo(added.log());
    }

    @Test
    void outsideTheSeasonItHasToBeSaidWhenItWas() {
        assertThat(Refusals.of(() -> logbook("2020-01-01T00:00:00Z").add(List.of(NOTE))))
                .isInstanceOf(LogRefusal.NoTimeOfEntry.class);
        assertThat(folder.resolve("log.csv")).doesNotExist();
    }

    @Test
    void aLogIsNoFolder() throws IOException {
        Path log = Files.createDirectory(folder.resolve("log.csv"));

        assertThat(Refusals.of(() -> logbook("2027-04-23T17:00:00Z").add(List.of(NOTE))))
                .isEqualTo(new LogRefusal.ObstructedLog(log, Obstacle.NO_ORDINARY_FILE));
    }

    @Test
    void onlyFieldsAndLotsOfTheSeasonAreTraced() {
        Logbook logbook = logbook("2027-04-23T17:00:00Z");

        assertThat(Refusals.of(() -> logbook.ofField("X1")))
                .isInstanceOfSatisfying(InputRefusal.Unknown.class, unknown -> {
                    assertThat(unknown.part()).isEqualTo(SeasonPart.FIELD);
                    assertThat(unknown.known()).contains("N80");
                });
        assertThat(logbook.ofField("N80").plan()).isEmpty();
    }

    private Logbook logbook(String utc) {
        return new Logbook(
                new LogOrder(
                        new GivenSeason(folder, List.of()),
                        Optional.empty(),
                        Optional.empty(),
                        false,
                        Optional.empty()),
                new SeasonClock(Clock.fixed(Instant.parse(utc), ZoneOffset.UTC)));
    }
}

package freshfurrow.desk;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.app.input.GivenSeason;
import freshfurrow.app.input.SeasonClock;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is tapped, as lines of the log. */
final class DeskLogTest {
    private static final String TAP = "{'lines': [{'at': '2027-04-22T09:30:05', 'fact': 'rain', 'amount': '0.4'}]}";

    @TempDir
    private Path folder = Path.of("");

    private Desk desk;
    private DeskClient phone;

    @BeforeEach
    void openDesk() throws IOException {
        for (String file : List.of("season.yaml", "fields.csv")) {
            Files.copy(Path.of("..", "scenarios", "first-season", file), folder.resolve(file));
        }
        Clock clock = Clock.fixed(Instant.parse("2027-04-22T18:00:00Z"), ZoneOffset.UTC);
        desk = Desk.open(new DeskOrder(new GivenSeason(folder, List.of()), new SeasonClock(clock), 0, false));
        phone = new DeskClient(desk.link());
    }

    @AfterEach
    void closeDesk() {
        desk.close();
    }

    private List<String> log() throws IOException {
        return Files.readAllLines(folder.resolve("log.csv"));
    }

    @Test
    void aTapThatComesTwiceCountsOnce() throws IOException {
        assertThat(phone.tell("/api/log", TAP).status()).isEqualTo(200);
        assertThat(phone.tell("/api/log", TAP).status()).isEqualTo(200);
        assertThat(log()).hasSize(2);
        assertThat(log().get(1)).contains("rain", "0.4 in");
    }

    @Test
    void aLineThatIsWrongIsRefusedForGood() {
        DeskClient.Answer answer =
                phone.tell("/api/log", TAP.replace("'rain', 'amount': '0.4'", "'fit', 'place': 'nowhere'"));
        assertThat(answer.status()).isEqualTo(409);
        assertThat(answer.problems()).contains("nowhere");
    }

    @Test
    void whileTheSeasonHasAProblemATapIsToBeSentLater() throws IOException {
        Path season = folder.resolve("season.yaml");
        String before = Files.readString(season);
        Files.writeString(season, before.replace("tank: 600 gal", "tank: 600 gallops"));
        DeskClient.Answer answer = phone.tell("/api/log", TAP);
        assertThat(answer.status()).isEqualTo(503);
        assertThat(answer.problems()).contains("gallops");
        Files.writeString(season, before);
        assertThat(phone.tell("/api/log", TAP).status()).isEqualTo(200);
    }

    @Test
    void whileTheLogCannotBeWrittenATapIsToBeSentLater() throws IOException {
        Files.createDirectory(folder.resolve("log.csv"));
        assertThat(phone.tell("/api/log", TAP).status()).isEqualTo(503);
        Files.delete(folder.resolve("log.csv"));
        assertThat(phone.tell("/api/log", TAP).status()).isEqualTo(200);
    }

    @Test
    void aLogThatIsBrokenIsSaidAndATapIsToBeSentLater() throws IOException {
        Files.writeString(folder.resolve("log.csv"), "entry,at\n1,yesterday\n");
        DeskClient.Answer answer = phone.tell("/api/log", TAP);
        assertThat(answer.status()).isEqualTo(503);
        assertThat(answer.problems()).contains("log.csv");
    }
}

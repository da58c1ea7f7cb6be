package freshfurrow.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
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

/** What taps on a phone teach its owner. */
final class DeskLearnTest {
    @TempDir
    private Path folder = Path.of("");

    private Desk desk;
    private DeskClient owner;

    @BeforeEach
    void openDesk() throws IOException {
        for (String file : List.of("season.yaml", "fields.csv")) {
            Files.copy(Path.of("..", "scenarios", "first-season", file), folder.resolve(file));
        }
        Clock clock = Clock.fixed(Instant.parse("2027-05-10T18:00:00Z"), ZoneOffset.UTC);
        desk = Desk.open(new DeskOrder(new GivenSeason(folder, List.of()), new SeasonClock(clock), 0, false));
        owner = new DeskClient(desk.link());
    }

    @AfterEach
    void closeDesk() {
        desk.close();
    }

    private JsonNode tell(String path, String what) {
        DeskClient.Answer answer = owner.tell(path, what);
        assertThat(answer.status()).as(answer.problems()).isEqualTo(200);
        return answer.json();
    }

    /** Full batches of 36 lb that took 24 minutes, not 20; 500 gal in 10 minutes, not 8:20. Times are typed as people say them. */
    private void tapSixDays() {
        for (int day = 22; day < 28; day++) {
            tell(
                    "/api/log",
                    ("{'lines': ["
                                    + "{'at': 'DAYT09:00', 'fact': 'batch', 'machine': 'R1', 'lot': 'windrow', 'amount': '36', 'took': '24'},"
                                    + "{'at': 'DAYT10:00', 'fact': 'transfer', 'machine': 'R1', 'amount': '500', 'took': '10 minutes'},"
                                    + "{'at': 'DAYT11:00', 'fact': 'drive', 'machine': 'R1', 'place': 'well N80', 'took': ''}]}")
                            .replace("DAY", "2027-04-" + day));
        }
    }

    @Test
    void whatTapsTeachIsTriedAsAVariantOnlyOnceUnlessItIsToBeReplaced() throws IOException {
        tapSixDays();

        JsonNode lessons = owner.ask("/api/learn").json();
        assertThat(lessons.get("values").toString())
                .isEqualTo("[{\"text\":\"24 min\",\"path\":[\"rigs\",\"R1\",\"batchTime\"]},"
                        + "{\"text\":\"50 gal/min\",\"path\":[\"rigs\",\"R1\",\"transferRate\"]}]");
        assertThat(lessons.get("lines").toString()).contains("6 entries: nobody said how long it took");
        assertThat(tell("/api/learn/variant", "{}").get("file").textValue()).isEqualTo("learned.yaml");
        assertThat(folder.resolve("learned.yaml")).content().contains("batchTime: 24 min");
        assertThat(owner.tell("/api/learn/variant", "{}").status()).isEqualTo(409);
        tell("/api/learn/variant", "{'replace': true}");
        assertThat(owner.ask("/api/compare").json().get("variants").toString()).contains("learned.yaml");
    }

    @Test
    void whatTapsTeachIsWrittenIntoTheSeasonFileAndThenDiffersNoMore() throws IOException {
        tapSixDays();
        String before = Files.readString(folder.resolve("season.yaml"));
        StringBuilder edits = new StringBuilder();
        owner.ask("/api/learn").json().get("values").forEach(value -> edits.append(edits.isEmpty() ? "" : ", ")
                .append("{'do': 'set', 'path': " + value.get("path") + ", 'value': " + value.get("text") + "}"));

        JsonNode files = owner.ask("/api/season").json().get("files");
        tell("/api/season/change", "{'files': " + files + ", 'edits': [" + edits + "]}");

        assertThat(folder.resolve("season.yaml"))
                .content()
                .isEqualTo(before.replace("batchTime: 20 min", "batchTime: 24 min")
                        .replace("transferRate: 60 gal/min", "transferRate: 50 gal/min"));
        assertThat(owner.ask("/api/learn").json().get("values")).isEmpty();
        tell("/api/season/undo", "{}");
        assertThat(folder.resolve("season.yaml")).hasContent(before);
    }

    @Test
    void anEmptyLogTeachesNothingAndMakesNoVariant() {
        JsonNode lessons = owner.ask("/api/learn").json();

        assertThat(lessons.get("entries").intValue()).isZero();
        assertThat(lessons.get("values")).isEmpty();
        DeskClient.Answer answer = owner.tell("/api/learn/variant", "{}");
        assertThat(answer.status()).isEqualTo(409);
        assertThat(answer.problems()).contains("nothing differs from the season file by more than chance");
        assertThat(folder.resolve("learned.yaml")).doesNotExist();
    }
}

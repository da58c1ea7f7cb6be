package freshfurrow.desk;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.app.input.GivenSeason;
import freshfurrow.app.input.SeasonClock;
import freshfurrow.cli.command.Freshfurrow;
import freshfurrow.model.read.Reading;
import freshfurrow.model.read.SeasonFiles;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two windows of a desk, and others beside it, on the same files. */
final class DeskTwoWindowsTest {
    private static final int CHANGES = 25;

    @TempDir
    private Path folder = Path.of("");

    private Path season = Path.of("");
    private Desk desk;
    private DeskClient one;
    private DeskClient other;

    @BeforeEach
    void openDesk() throws IOException {
        for (String file : List.of("season.yaml", "fields.csv")) {
            Files.copy(Path.of("..", "scenarios", "first-season", file), folder.resolve(file));
        }
        season = folder.resolve("season.yaml");
        desk = Desk.open(
                new DeskOrder(new GivenSeason(folder, List.of()), new SeasonClock(Clock.systemUTC()), 0, false));
        one = new DeskClient(desk.link());
        other = new DeskClient(desk.link());
    }

    @AfterEach
    void closeDesk() {
        desk.close();
    }

    private static String files(DeskClient window) {
        return window.ask("/api/season").json().get("files").toString();
    }

    private static DeskClient.Answer change(DeskClient window, String files, String path, String value) {
        return window.tell(
                "/api/season/change",
                "{'files': " + files + ", 'edits': [{'do': 'set', 'path': [" + path + "], 'value': '" + value + "'}]}");
    }

    @Test
    void aChangeOnTopOfWhatSomebodyElseWroteIsNotMadeAndBothTextsAreShown() throws IOException {
        String before = Files.readString(season);
        String seen = files(one);
        String outside = before.replace("tank: 600 gal", "tank: 700 gal");
        Files.writeString(season, outside);

        DeskClient.Answer answer = change(one, seen, "'planters', 'P1', 'tank'", "800 gal");

        assertThat(answer.status()).isEqualTo(409);
        assertThat(answer.problems()).contains("season.yaml was changed elsewhere meanwhile");
        assertThat(answer.json().at("/changed/file").textValue()).isEqualTo("season.yaml");
        assertThat(answer.json().at("/changed/now").textValue()).isEqualTo(outside);
        assertThat(answer.json().at("/changed/yours").textValue())
                .isEqualTo(before.replace("tank: 600 gal", "tank: 800 gal"));
        assertThat(season).hasContent(outside);
        assertThat(change(one, files(one), "'planters', 'P1', 'tank'", "800 gal")
                        .status())
                .isEqualTo(200);
    }

    @Test
    void ofTwoWindowsTheSecondIsTold() {
        String seen = files(one);
        assertThat(change(one, seen, "'planters', 'P1', 'tank'", "700 gal").status())
                .isEqualTo(200);
        assertThat(change(other, seen, "'planters', 'P1', 'tank'", "800 gal").status())
                .isEqualTo(409);
        assertThat(season).content().contains("tank: 700 gal").doesNotContain("800 gal");
    }

    @Test
    void whatOneWindowTakesBackDoesNotTakeWhatIsWrittenOutsideAlong() throws IOException {
        change(one, files(one), "'planters', 'P1', 'tank'", "700 gal");
        String outside = Files.readString(season) + "# from an editor\n";
        Files.writeString(season, outside);
        DeskClient.Answer answer = one.tell("/api/season/undo", "{}");
        assertThat(answer.status()).isEqualTo(409);
        assertThat(answer.json().at("/changed/now").textValue()).isEqualTo(outside);
        assertThat(season).hasContent(outside);
    }

    /** Each window adds places of its own, and a command logs beside them; who is told of a change asks again. */
    @Test
    void nothingIsLostOfTwoWindowsAndACommandAtOnce() throws Exception {
        ExecutorService at = Executors.newFixedThreadPool(3);
        try {
            List<Future<Integer>> told = new ArrayList<>();
            told.add(at.submit(adding(one, "One")));
            told.add(at.submit(adding(other, "Other")));
            told.add(at.submit(this::logging));
            for (Future<Integer> each : told) {
                each.get();
            }
        } finally {
            at.shutdownNow();
        }
        List<String> places = new ArrayList<>();
        one.ask("/api/season").json().at("/tree/places").fieldNames().forEachRemaining(places::add);
        for (int i = 0; i < CHANGES; i++) {
            assertThat(places).contains("One" + i, "Other" + i);
        }
        assertThat(SeasonFiles.read(folder, List.of())).isInstanceOf(Reading.Valid.class);
        assertThat(Files.readAllLines(folder.resolve("log.csv"))).hasSize(1 + 3 * CHANGES);
    }

    private static Callable<Integer> adding(DeskClient window, String name) {
        return () -> {
            int told = 0;
            for (int i = 0; i < CHANGES; ) {
                DeskClient.Answer answer = window.tell(
                        "/api/season/change",
                        "{'files': " + files(window) + ", 'edits': [{'do': 'set', 'path': ['places', '" + name + i
                                + "'], 'value': {'lat': '41.0', 'lon': '-96.9'}}]}");
                window.tell(
                        "/api/log",
                        "{'lines': [{'at': '2027-04-22T09:30', 'fact': 'note', 'note': '" + name + i + "'}]}");
                if (answer.status() == 200) {
                    i++;
                } else {
                    assertThat(answer.problems()).contains("was changed elsewhere meanwhile");
                    told++;
                }
            }
            return told;
        };
    }

    private Integer logging() {
        for (int i = 0; i < CHANGES; i++) {
            StringWriter err = new StringWriter();
            int code = Freshfurrow.run(
                    new PrintWriter(new StringWriter()),
                    new PrintWriter(err),
                    "log",
                    folder.toString(),
                    "note",
                    "command " + i,
                    "--at",
                    "2027-04-22T10:00");
            assertThat(code).as(err.toString()).isZero();
        }
        return 0;
    }
}

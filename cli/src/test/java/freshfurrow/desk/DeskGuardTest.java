package freshfurrow.desk;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.app.input.GivenSeason;
import freshfurrow.app.input.SeasonClock;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Requests that are not of the desk's own pages: nothing is read, nothing written, and the desk goes on. */
final class DeskGuardTest {
    private static final Path SCENARIO = Path.of("..", "scenarios", "first-season");
    private static final String EDIT =
            "{\"files\": {}, \"edits\": [{\"do\": \"set\", \"path\": [\"season\", \"name\"], \"value\": \"Taken\"}]}";

    @TempDir
    private Path folder = Path.of("");

    private Desk desk;
    private int port;
    private String cookie = "";
    private Map<String, String> before = Map.of();

    @BeforeEach
    void openDesk() throws IOException {
        try (Stream<Path> files = Files.list(SCENARIO)) {
            for (Path file : files.toList()) {
                Files.copy(file, folder.resolve(file.getFileName()));
            }
        }
        before = files();
        desk = Desk.open(
                new DeskOrder(new GivenSeason(folder, List.of()), new SeasonClock(Clock.systemUTC()), 0, false));
        URI link = URI.create(desk.link());
        port = link.getPort();
        cookie = new RawRequest(port, "GET", link.getPath() + "?" + link.getQuery())
                .send()
                .cookie()
                .orElseThrow();
    }

    @AfterEach
    void nothingWasWrittenAndTheDeskGoesOn() {
        assertThat(files()).isEqualTo(before);
        assertThat(get("/api/season").status()).isEqualTo(200);
        desk.close();
    }

    private Map<String, String> files() {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                files.put(folder.relativize(file).toString(), Files.readString(file));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return files;
    }

    private RawRequest.Response get(String path) {
        return new RawRequest(port, "GET", path).with("Cookie", cookie).send();
    }

    private RawRequest edit() {
        return RawRequest.post(port, "/api/season/change", EDIT).with("Cookie", cookie);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "evil.example",
                "evil.example:%d",
                "localhost",
                "localhost:1",
                "127.0.0.1.evil.example:%d",
                "localhost:%d.evil.example",
                ""
            })
    void aNameThatIsNotTheDesksOwnIsNotAnswered(String host) {
        RawRequest.Response response = new RawRequest(port, "GET", "/api/season")
                .with("Cookie", cookie)
                .with("Host", String.format(host, port))
                .send();
        assertThat(response.status()).isIn(400, 421);
        assertThat(response.body()).doesNotContain("First season");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "http://evil.example",
                "https://localhost:%d",
                "http://localhost:1",
                "http://127.0.0.1:%d",
                "null",
                ""
            })
    void anotherSiteChangesNothing(String origin) {
        assertThat(edit().with("Origin", String.format(origin, port)).send().status())
                .isEqualTo(403);
    }

    @Test
    void aChangeThatDoesNotSayWhereItComesFromIsNotMade() {
        assertThat(edit().without("Origin").send().status()).isEqualTo(403);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "desk-%d=", "desk-%d=0000000000000000000000000000000000000000", "desk-1=x", "other=1"})
    void withoutTheSecretNothingIsReadOrChanged(String stranger) {
        String other = String.format(stranger, port);
        assertThat(edit().with("Cookie", other).send().status()).isEqualTo(403);
        for (String path : List.of(
                "/",
                "/api/season",
                "/api/plan",
                "/api/today",
                "/api/events",
                "/plan/now.html",
                "/sheets.html",
                "/api/share",
                "/api/begin")) {
            RawRequest.Response response =
                    new RawRequest(port, "GET", path).with("Cookie", other).send();
            assertThat(response.status()).as(path).isEqualTo(403);
            assertThat(response.body()).doesNotContain("First season", "yard");
        }
    }

    @Test
    void aWrongKeyOpensNothing() {
        for (String key : List.of(
                "", "x", "0".repeat(40), desk.link().substring(desk.link().indexOf('=') + 2))) {
            RawRequest.Response response = new RawRequest(port, "GET", "/open?key=" + key).send();
            assertThat(response.status()).isEqualTo(403);
            assertThat(response.cookie()).isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/desk/../season.yaml",
                "/desk/..%2fseason.yaml",
                "/desk/%2e%2e/season.yaml",
                "/desk//etc/passwd",
                "/desk/season.yaml",
                "/desk/desk.js%00",
                "/desk/DESK.JS",
                "/season.yaml",
                "/log.csv",
                "/../../etc/passwd",
                "//etc/passwd",
                "/plan/now.html",
                "/api/why?field=../../etc/passwd",
                "/api/today?day=../../x",
                "/sheets.html?day=%00",
                "/api/nothing"
            })
    void noFileIsReadByItsName(String path) {
        RawRequest.Response response = get(path);
        assertThat(response.status()).isBetween(400, 499);
        assertThat(response.body()).doesNotContain("root:", "windrow");
    }

    @Test
    void theFilesOfASeasonsFolderCannotBeLeft() {
        for (String name : List.of("../x.yaml", "/etc/passwd", "season.yaml", "fields.csv", "two.yaml")) {
            RawRequest.Response response = RawRequest.post(
                            port, "/api/compare/start", "{\"springs\": 1, \"variant\": \"" + name + "\"}")
                    .with("Cookie", cookie)
                    .send();
            assertThat(response.status()).isEqualTo(400);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "[]",
                "{",
                "null",
                "{\"edits\": [{\"do\": \"fly\", \"path\": [\"season\"]}]}",
                "{\"edits\": [{\"do\": \"set\", \"path\": \"season\", \"value\": 1}]}",
                "{\"edits\": [{\"do\": \"set\", \"path\": [1], \"value\": \"x\"}]}",
                "{\"edits\": [{\"do\": \"set\", \"path\": [], \"value\": \"x\"}]}",
                "{\"edits\": [{}]}"
            })
    void whatMakesNoSenseIsRefused(String body) {
        RawRequest.Response response = RawRequest.post(port, "/api/season/change", body)
                .with("Cookie", cookie)
                .send();
        assertThat(response.status()).isBetween(400, 499);
        assertThat(response.body()).contains("problems");
    }

    @Test
    void deepJsonIsRefused() {
        String deep = "{\"edits\": " + "[".repeat(5_000) + "]".repeat(5_000) + "}";
        assertThat(RawRequest.post(port, "/api/season/change", deep)
                        .with("Cookie", cookie)
                        .send()
                        .status())
                .isEqualTo(400);
    }

    @Test
    void moreThanAFormFillsIsRefusedUnread() {
        RawRequest.Response response = RawRequest.post(port, "/api/season/change", "")
                .with("Cookie", cookie)
                .with("Content-Length", "50000000")
                .send();
        assertThat(response.status()).isEqualTo(413);
    }

    @Test
    void aFormOfAnotherSiteIsNotTaken() {
        for (String type : List.of("text/plain", "application/x-www-form-urlencoded", "multipart/form-data")) {
            assertThat(edit().with("Content-Type", type).send().status()).isEqualTo(415);
        }
        assertThat(edit().without("Content-Type").send().status()).isEqualTo(415);
    }

    @ParameterizedTest
    @ValueSource(strings = {"PUT", "DELETE", "OPTIONS", "TRACE", "PATCH", "CONNECT", "BREW"})
    void onlyReadingAndTellingIsAnswered(String method) {
        assertThat(new RawRequest(port, method, "/api/season")
                        .with("Cookie", cookie)
                        .send()
                        .status())
                .isBetween(400, 599);
    }

    @Test
    void aThousandRequestsAtOnceAreAnsweredOrRefused() throws Exception {
        ExecutorService senders = Executors.newFixedThreadPool(20);
        try {
            List<Future<Integer>> answers = new ArrayList<>();
            IntStream.range(0, 1_000)
                    .forEach(i -> answers.add(senders.submit(() -> i % 2 == 0
                            ? get("/api/role").status()
                            : edit().without("Cookie").send().status())));
            for (int i = 0; i < answers.size(); i++) {
                assertThat(answers.get(i).get()).isEqualTo(i % 2 == 0 ? 200 : 403);
            }
        } finally {
            senders.shutdownNow();
        }
    }

    @Test
    void noOtherSiteMayShowTheDeskInAFrameOrGuessItsContents() {
        assertThat(get("/").head())
                .contains(
                        "Content-Security-Policy: default-src 'none'; script-src 'self'",
                        "frame-ancestors 'self'",
                        "X-Content-Type-Options: nosniff",
                        "Cross-Origin-Resource-Policy: same-origin",
                        "Cache-Control: no-store");
    }
}

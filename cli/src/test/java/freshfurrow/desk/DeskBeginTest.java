package freshfurrow.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import freshfurrow.app.input.GivenSeason;
import freshfurrow.app.input.SeasonClock;
import freshfurrow.app.shapefile.ShpBytes;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Base64;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a desk without a season answers. */
final class DeskBeginTest {
    private static final String COMPLETE =
            "{\"units\": \"us\", \"entries\": {\"places\": [{\"id\": \"yard\", \"typed\": {\"at\": \"41, -97\"}}]},"
                    + " \"fields\": [{\"id\": \"N40\", \"area\": \"40\", \"lat\": \"41.02\", \"lon\": \"-97.01\", \"crop\": \"corn\"}]}";

    @TempDir
    private Path folder = Path.of("");

    private Path season = Path.of("");
    private Desk desk;
    private int port;
    private String cookie = "";

    @BeforeEach
    void openDesk() throws IOException {
        season = folder.resolve("new");
        desk = Desk.open(
                new DeskOrder(new GivenSeason(season, List.of()), new SeasonClock(Clock.systemUTC()), 0, false));
        URI link = URI.create(desk.link());
        port = link.getPort();
        cookie = new RawRequest(port, "GET", link.getPath() + "?" + link.getQuery())
                .send()
                .cookie()
                .orElseThrow();
    }

    @AfterEach
    void closeDesk() {
        desk.close();
    }

    private RawRequest.Response post(String path, String body) {
        return RawRequest.post(port, path, body).with("Cookie", cookie).send();
    }

    private String get(String path) {
        return new RawRequest(port, "GET", path).with("Cookie", cookie).send().body();
    }

    @Test
    void aSeasonIsWrittenOnceAndNeverOverAnother() throws IOException {
        assertThat(get("/api/role")).contains("\"begins\":true");
        assertThat(post("/api/begin/look", COMPLETE).body()).contains("\"missing\":[]", "\"sums\":[\"Season ");
        assertThat(season).doesNotExist();
        assertThat(post("/api/begin", COMPLETE).status()).isEqualTo(200);
        assertThat(season.resolve("fields.csv")).content().contains("N40,,40,41.02,-97.01,corn");
        assertThat(get("/api/role")).contains("\"begins\":false");
        assertThat(get("/api/season/name")).startsWith("{\"name\":\"Season 20");
        assertThat(get("/api/season/sums")).contains("\"sums\":[\"Season ");
        String before = Files.readString(season.resolve("season.yaml"));
        RawRequest.Response again = post("/api/begin", COMPLETE.replace("41, -97", "42, -97"));
        assertThat(again.status()).isEqualTo(409);
        assertThat(again.body()).contains("exists already, so nothing was written");
        assertThat(season.resolve("season.yaml")).hasContent(before);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{}",
                "{\"units\": \"feet\"}",
                "{\"units\": 1}",
                "{\"units\": \"us\", \"entries\": {\"planters\": [{\"id\": 7}]}}",
                "{\"units\": \"us\", \"fields\": [{\"area\": {}}]}",
                "{\"units\": \"us\", \"map\": \"{\\\"features\\\": [{}]}\", \"fields\": []}"
            })
    void whatMakesNoSenseIsRefused(String body) {
        assertThat(post("/api/begin", body).status()).isEqualTo(400);
        assertThat(season).doesNotExist();
    }

    private static String sent(String name, byte[] content) {
        return "{\"name\": \"" + name + "\", \"base64\": \""
                + Base64.getEncoder().encodeToString(content) + "\"}";
    }

    @Test
    void aShapefileInItsPartsBecomesAMap() throws Exception {
        byte[] shp = ShpBytes.polygons(List.of(List.of(ShpBytes.square(-97, 41, 0.01))));
        byte[] dbf = ShpBytes.table(List.of("NAME"), List.of(List.of("North")));
        RawRequest.Response answer =
                post("/api/begin/table", "{\"files\": [" + sent("farm.shp", shp) + "," + sent("farm.dbf", dbf) + "]}");

        assertThat(answer.status()).isEqualTo(200);
        assertThat(answer.body())
                .contains(
                        "\"drawn\":true", "\"name\":\"North\"", "Of its table, NAME is name.", "There is no .prj file");
        JsonNode map = new ObjectMapper().readTree(answer.body()).path("map");
        assertThat(post("/api/begin/table", "{\"text\": " + map + "}").body())
                .contains("\"drawn\":true", "\"name\":\"North\"");
    }

    @Test
    void filesThatAreNoMapAreRefused() {
        for (String files : List.of(
                "[]",
                "[{}]",
                "[" + sent("farm.shp", new byte[] {1, 2}) + "]",
                "[{\"name\": \"farm.shp\", \"base64\": \"*\"}]",
                "[" + sent("farm.kmz", "PK\u0003\u0004broken".getBytes(StandardCharsets.UTF_8)) + "]")) {
            assertThat(post("/api/begin/table", "{\"files\": " + files + "}").status())
                    .as(files)
                    .isEqualTo(400);
        }
    }

    @Test
    void whatIsUsualFollowsTheAnswers() {
        String autumn = COMPLETE.replace(
                "\"entries\": {",
                "\"entries\": {\"season\": [{\"id\": \"\", \"typed\": {\"first\": \"2027-09-01\"}}], ");
        assertThat(post("/api/begin/look", autumn).body())
                .contains("\"usual\":\"2027-09-01 to 2027-10-18\",\"note\":\"default: the whole season\"");
    }

    @Test
    void thingsAreNamedAndANameGivenTwiceIsToldAtItsPlace() {
        String named = COMPLETE.replace(
                "\"entries\": {",
                "\"entries\": {\"planters\": [{\"id\": \"\", \"typed\": {}}, {\"id\": \"Old blue\", \"typed\": {}},"
                        + " {\"id\": \"Old-blue\", \"typed\": {}}], ");
        assertThat(post("/api/begin/look", named).body())
                .contains(
                        "\"planters\":[\"P1\",\"Old-blue\",\"Old-blue-2\"],\"rigs\":[\"R1\"]",
                        "\"path\":\"planters.Old-blue-2\",\"field\":\"\",\"unusable\":true");
    }

    @Test
    void aProblemOfAFieldNamesItAndWhatIsMissingIsNoWrongAnswer() {
        String swapped = COMPLETE.replace("\"id\": \"N40\",", "\"name\": \"Hossz\u00fa-d\u0171l\u0151\",")
                .replace("41.02", "146.67")
                .replace("\"area\": \"40\"", "\"area\": \"\"");
        assertThat(post("/api/begin/look", swapped).body())
                .contains(
                        "\"missing\":[\"the area of Hossz\u00fa-d\u0171l\u0151\"]",
                        "\"path\":\"lat\",\"field\":\"Hossz\u00fa-d\u0171l\u0151\",\"unusable\":true",
                        "\"path\":\"area\",\"field\":\"Hossz\u00fa-d\u0171l\u0151\",\"unusable\":false");
    }

    @Test
    void headingsOfATableAreGuessed() {
        String text = "{\"text\": \"\uFEFFField\\tAcres\\r\\n<b>North\\t40\\r\\n\"}";
        assertThat(post("/api/begin/table", text).body())
                .contains("\"columns\":[\"name\",\"area\"]", "\"name\":\"<b>North\"", "\"area\":\"40 ac\"");
        assertThat(post("/api/begin/table", "{\"text\": \"{\"}").status()).isEqualTo(400);
    }
}

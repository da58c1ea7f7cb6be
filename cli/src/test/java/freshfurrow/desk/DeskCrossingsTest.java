package freshfurrow.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import freshfurrow.app.CopiedFolder;
import freshfurrow.app.input.GivenSeason;
import freshfurrow.app.input.SeasonClock;
import freshfurrow.cli.command.Freshfurrow;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Seasons of every kind, worked on at the desk from the first change to the replan. */
final class DeskCrossingsTest {
    @TempDir
    private Path folder = Path.of("");

    private Desk desk;
    private DeskClient owner;

    private void copy(String scenario) {
        CopiedFolder.of(Path.of("..", "scenarios", scenario), folder);
    }

    private void plan() {
        StringWriter err = new StringWriter();
        assertThat(Freshfurrow.run(
                        new PrintWriter(new StringWriter()),
                        new PrintWriter(err),
                        "plan",
                        folder.toString(),
                        "--steps",
                        "0",
                        "--seed",
                        "1"))
                .as(err.toString())
                .isZero();
    }

    private void open(String time, ZoneId zone) throws IOException {
        Clock clock = Clock.fixed(LocalDateTime.parse(time).atZone(zone).toInstant(), zone);
        desk = Desk.open(new DeskOrder(new GivenSeason(folder, List.of()), new SeasonClock(clock), 0, false));
        owner = new DeskClient(desk.link());
    }

    private void reopen(String time, ZoneId zone) throws IOException {
        desk.close();
        open(time, zone);
    }

    @AfterEach
    void closeDesk() {
        desk.close();
    }

    private JsonNode ask(String path) {
        DeskClient.Answer answer = owner.ask(path);
        assertThat(answer.status()).as("%s: %s", path, answer.problems()).isEqualTo(200);
        return answer.json();
    }

    private JsonNode tell(String path, String what) {
        DeskClient.Answer answer = owner.tell(path, what);
        assertThat(answer.status()).as("%s: %s", path, answer.problems()).isEqualTo(200);
        return answer.json();
    }

    private static List<String> texts(JsonNode list, String key) {
        List<String> texts = new ArrayList<>();
        list.forEach(one -> texts.add(one.path(key).asText()));
        return texts;
    }

    private JsonNode search(boolean again) throws InterruptedException {
        tell("/api/plan/start", "{'seconds': 2, 'again': " + again + "}");
        JsonNode search = ask("/api/plan").get("search");
        while (search.get("state").textValue().equals("underway")) {
            Thread.sleep(100);
            search = ask("/api/plan").get("search");
        }
        assertThat(search.get("state").textValue())
                .as(search.get("problems").toString())
                .isEqualTo("proposed");
        return search;
    }

    /** In US units, metric with batches at the water point, and with a sprayer that is mounted on a rig. */
    @ParameterizedTest
    @ValueSource(strings = {"first-season", "metric", "mixed-farm"})
    void aSeasonWhoseTimesVaryIsJudgedByMoney(String scenario) throws Exception {
        copy(scenario);
        open("2027-01-01T06:00", ZoneId.of("UTC"));
        change(
                "{'do': 'set', 'path': ['goals', 'by'], 'value': 'money'}",
                "{'do': 'set', 'path': ['costs', 'labour'], 'value': '24 /h'}",
                "{'do': 'set', 'path': ['costs', 'unserved'], 'value': '900 /ha'}",
                "{'do': 'set', 'path': ['spread', 'batchTime'], 'value': '0.25'}",
                "{'do': 'set', 'path': ['spread', 'breakdowns'], 'value': 'none'}");
        assertThat(folder.resolve("season.yaml")).content().contains("breakdowns: none");
        change(
                "{'do': 'remove', 'path': ['spread', 'batchTime']}",
                "{'do': 'remove', 'path': ['spread', 'breakdowns']}");
        assertThat(ask("/api/season").at("/tree/spread").isMissingNode())
                .as("times vary still")
                .isFalse();
        change(
                "{'do': 'set', 'path': ['spread', 'breakdowns', 'between'], 'value': '60'}",
                "{'do': 'set', 'path': ['spread', 'breakdowns', 'down'], 'value': '2 h'}");
        assertThat(ask("/api/season").at("/tree/spread/breakdowns/between").textValue())
                .isEqualTo("60 h");

        aSeasonIsChangedPlannedTriedAskedAboutLoggedAndPlannedAgain();

        assertThat(ask("/api/plan").at("/now/totals").toString()).contains("Bill: hours", "How sure", "Stale");
    }

    private void change(String... edits) {
        JsonNode files = ask("/api/season").get("files");
        JsonNode changed =
                tell("/api/season/change", "{'files': " + files + ", 'edits': [" + String.join(", ", edits) + "]}");
        assertThat(changed.get("problems")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"first-season", "metric", "spring", "weather-spring", "mixed-farm", "cooperative"})
    void aSeasonIsChangedPlannedTriedAskedAboutLoggedAndPlannedAgain(String scenario) throws Exception {
        copy(scenario);
        open("2027-01-01T06:00", ZoneId.of("UTC"));
        aSeasonIsChangedPlannedTriedAskedAboutLoggedAndPlannedAgain();
    }

    private void aSeasonIsChangedPlannedTriedAskedAboutLoggedAndPlannedAgain() throws Exception {
        JsonNode season = ask("/api/season");
        ZoneId zone = ZoneId.of(season.at("/tree/season/timezone").textValue());
        assertThat(season.get("problems")).isEmpty();
        String planter = season.at("/tree/planters").fieldNames().next();
        JsonNode changed = tell(
                "/api/season/change",
                "{'files': " + season.get("files") + ", 'edits': [{'do': 'set', 'path': ['planters', '" + planter
                        + "', 'moveTime'], 'value': '9'}]}");
        assertThat(changed.at("/tree/planters/" + planter + "/moveTime").textValue())
                .isEqualTo("9 min");
        assertThat(changed.get("problems")).isEmpty();

        search(false);
        tell("/api/plan/take", "{}");
        assertThat(ask("/api/plan").at("/now/ofSeason").booleanValue()).isTrue();

        JsonNode board = ask("/api/try");
        JsonNode field = first(board.get("fields"), "day");
        LocalDate day = LocalDate.parse(field.get("day").textValue());
        JsonNode tried = tell(
                "/api/try",
                "{'placings': [{'field': '" + field.get("id").textValue() + "', 'machine': '"
                        + field.get("machine").textValue() + "', 'on': '" + day + "'}]}");
        assertThat(tried.at("/now/totals")).isEqualTo(ask("/api/plan").at("/now/totals"));

        JsonNode questions = ask("/api/ask");
        assertThat(texts(questions.get("fields"), "id"))
                .contains(field.get("id").textValue());
        assertThat(ask("/api/why?field=" + field.get("id").textValue()).get("lines"))
                .isNotEmpty();

        reopen(day + "T23:00", zone);
        JsonNode today = ask("/api/today?day=" + day);
        List<String> lines = new ArrayList<>();
        today.get("machines").forEach(machine -> machine.get("steps").forEach(step -> {
            if (step.has("line") && !step.get("logged").booleanValue()) {
                lines.add(step.get("line").toString());
            }
        }));
        assertThat(lines).isNotEmpty();
        tell("/api/log", "{\"lines\": [" + String.join(",", lines) + "]}");
        ask("/api/today?day=" + day).get("machines").forEach(machine -> machine.get("steps")
                .forEach(step -> assertThat(
                                !step.has("line") || step.get("logged").booleanValue())
                        .as(step.toString())
                        .isTrue()));

        JsonNode again = search(true);
        assertThat(again.get("from").textValue()).startsWith(day.toString());
        tell("/api/plan/take", "{}");
        assertThat(ask("/api/plan").at("/now/from").textValue()).startsWith(day.toString());
        assertThat(ask("/api/try").get("days").get(0).get("date").textValue()).isEqualTo(day.toString());
        compare(season);
    }

    /** With one more rig, over the springs of its weather record; without one it says so, and leaves nothing behind. */
    private void compare(JsonNode season) throws InterruptedException {
        String rig = season.at("/tree/rigs").fieldNames().next();
        tell("/api/compare/start", "{'springs': 1, 'secondLike': '" + rig + "'}");
        JsonNode run = ask("/api/compare").get("run");
        while (run.get("state").textValue().equals("underway")) {
            Thread.sleep(100);
            run = ask("/api/compare").get("run");
        }
        boolean hasRecord = season.at("/tree/weather").isObject();
        assertThat(run.get("state").textValue())
                .as(run.get("problems").toString())
                .isEqualTo(hasRecord ? "made" : "failed");
        assertThat(Files.exists(folder.resolve("second-" + rig + ".json"))).isEqualTo(hasRecord);
        if (!hasRecord) {
            assertThat(run.get("problems")).singleElement().asString().contains("weather");
        }
    }

    @Test
    void fourHundredFieldsAreComparedOverASpringOfAWeatherRecord() throws Exception {
        copy("cooperative");
        Files.copy(Path.of("..", "scenarios", "weather-spring", "station.csv"), folder.resolve("station.csv"));
        Files.writeString(
                folder.resolve("season.yaml"), "weather: {file: station.csv, year: 2019}\n", StandardOpenOption.APPEND);
        open("2027-01-01T06:00", ZoneId.of("UTC"));
        compare(ask("/api/season"));
        assertThat(ask("/api/compare").at("/run/lines").toString()).contains("second-R1", "planter fills");
    }

    private static JsonNode first(JsonNode list, String key) {
        for (JsonNode one : list) {
            if (one.has(key)) {
                return one;
            }
        }
        throw new AssertionError("none of " + list + " has " + key);
    }

    @Test
    void onTheLastDayOfASeasonThereIsWorkToSeeAndToLog() throws IOException {
        copy("first-season");
        plan();
        open("2027-01-01T06:00", ZoneId.of("America/Chicago"));
        JsonNode days = ask("/api/try").get("days");
        String last = days.get(days.size() - 1).get("date").textValue();
        reopen(last + "T23:30", ZoneId.of("America/Chicago"));
        assertThat(ask("/api/today").get("day").textValue()).isEqualTo(last);
        tell("/api/log", "{'lines': [{'at': '" + last + "T23:29', 'fact': 'rain', 'amount': '1'}]}");
        assertThat(ask("/api/today").get("log")).hasSize(1);
        tell("/api/plan/start", "{'seconds': 1, 'again': true}");
        assertThat(ask("/api/plan").has("search")).isTrue();
    }

    @Test
    void aLogOfThousandsOfEntriesIsShownAndAddedTo() throws IOException {
        copy("first-season");
        plan();
        StringBuilder log = new StringBuilder("entry,at,fact,note\n");
        for (int i = 1; i <= 5_000; i++) {
            log.append(i).append(",2027-04-20T10:00,note,number ").append(i).append('\n');
        }
        Files.writeString(folder.resolve("log.csv"), log);
        open("2027-04-22T11:00", ZoneId.of("America/Chicago"));
        ask("/api/today");
        assertThat(ask("/api/today?day=2027-04-20").get("log")).hasSize(5_000);
        tell("/api/log", "{'lines': [{'at': '2027-04-22T10:00', 'fact': 'note', 'note': 'one more'}]}");
        assertThat(Files.readAllLines(folder.resolve("log.csv"))).hasSize(5_002);
    }
}

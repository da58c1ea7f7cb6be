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
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the desk asks of tanks when work stops, and the lines that come of the answers. */
final class DeskStoppedTest {
    @TempDir
    private Path folder = Path.of("");

    private Desk desk;
    private DeskClient phone;

    @AfterEach
    void closeDesk() {
        desk.close();
    }

    private void open(String scenario, String time, String zone) throws IOException {
        CopiedFolder.of(Path.of("..", "scenarios", scenario), folder);
        run("plan", folder.toString(), "--steps", "0", "--seed", "1");
        ZoneId farm = ZoneId.of(zone);
        Clock clock = Clock.fixed(LocalDateTime.parse(time).atZone(farm).toInstant(), farm);
        desk = Desk.open(new DeskOrder(new GivenSeason(folder, List.of()), new SeasonClock(clock), 0, false));
        phone = new DeskClient(desk.link());
    }

    private static String run(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        assertThat(Freshfurrow.run(new PrintWriter(out), new PrintWriter(err), arguments))
                .as(err.toString())
                .isZero();
        return out.toString();
    }

    private DeskClient.Answer stopped(String time, String left) {
        return phone.tell("/api/today/stopped", "{'at': '" + time + "', 'left': {" + left + "}}");
    }

    @ParameterizedTest
    @CsvSource({
        "first-season, America/Chicago, 2027-04-22T11:00, 123 gal",
        "metric, Europe/Paris, 2027-04-15T14:00, 432 L"
    })
    void whatIsSaidToBeLeftIsWhatAReplanFindsInTheTank(String scenario, String zone, String time, String left)
            throws IOException {
        open(scenario, time, zone);
        JsonNode asked = stopped(time, "").json();
        assertThat(asked.path("tanks")).hasSize(1);
        assertThat(asked.at("/tanks/0/amount").textValue())
                .matches("\\d+(\\.\\d)? " + left.split(" ", -1)[1])
                .isNotEqualTo(left);

        JsonNode said = stopped(time, "'P1': '" + left + "'").json();
        assertThat(phone.tell("/api/log", "{'lines': " + said.path("lines") + "}")
                        .status())
                .isEqualTo(200);
        assertThat(stopped(time, "").json().at("/tanks/0/amount").textValue()).isEqualTo(left);
        assertThat(stopped(time, "").json().path("lines")).isEmpty();

        String plan = folder.resolve("plan").toString();
        String replanned = run(
                "replan", folder.toString(), "--plan", plan, "--now", time, "--rain", time + "=30mm", "--steps", "0");
        assertThat(replanned)
                .contains("P1 has " + left + " of load "
                        + asked.at("/tanks/0/load").textValue());
    }

    @Test
    void theFigureOfThePlanIsTakenAsItIs() throws IOException {
        open("first-season", "2027-04-22T11:00", "America/Chicago");
        JsonNode asked = stopped("2027-04-22T11:00", "").json();
        String amount = asked.at("/tanks/0/amount").textValue();

        assertThat(stopped("2027-04-22T11:00", "'P1': '" + amount + "'").json()).isEqualTo(asked);
        assertThat(asked.path("lines"))
                .isNotEmpty()
                .allSatisfy(line -> assertThat(line.path("fact").textValue()).isEqualTo("planted"));
    }

    @Test
    void beforeTheFirstFillNothingIsAsked() throws IOException {
        open("first-season", "2027-04-22T11:00", "America/Chicago");
        JsonNode asked = stopped("2027-04-20T11:00", "").json();

        assertThat(asked.path("tanks")).isEmpty();
        assertThat(asked.path("lines")).isEmpty();
    }

    @Test
    void whatNoLineCanSayIsRefusedWithTheReason() throws IOException {
        open("first-season", "2027-04-22T11:00", "America/Chicago");
        String time = "2027-04-22T11:30";

        assertThat(stopped(time, "'P1': 'half'").problems()).contains("'half' is not a volume; write it like 600 gal.");
        assertThat(stopped(time, "'P1': '5000 gal'").problems())
                .contains(
                        "No 5000 gal can be left in P1's tank of load L0002: by the plan and the log it is 0 to 600 gal.");
        assertThat(stopped(time, "'P1': '600 gal'").problems())
                .contains("The log cannot say that nothing of load L0002 was planted; say that P1 is behind the plan");
        assertThat(stopped("noon", "").problems()).contains("'noon' is not a date and time like 2027-05-03T15:10.");
    }
}

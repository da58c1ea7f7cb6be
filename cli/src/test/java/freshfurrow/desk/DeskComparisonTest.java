package freshfurrow.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import freshfurrow.app.SeasonCopy;
import freshfurrow.app.springs.ComparisonOrder;
import freshfurrow.app.springs.SeasonComparison;
import freshfurrow.app.springs.SpringRange;
import freshfurrow.cli.text.ComparisonReport;
import freshfurrow.solver.lived.SpringProgress;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One rig or two, asked at the desk. */
final class DeskComparisonTest {
    @TempDir
    private Path folder = Path.of("");

    @Test
    void oneMoreRigIsComparedAsTheCommandLineDoes() throws IOException, InterruptedException {
        SeasonCopy season = SeasonCopy.of("weather-spring", folder);
        try (Desk desk = Desk.open(new DeskOrder(season.given(), SeasonCopy.IN_ANOTHER_YEAR, 0, false))) {
            DeskClient owner = new DeskClient(desk.link());
            owner.tell("/api/compare/start", "{'springs': 2, 'secondLike': 'R1'}");
            JsonNode run = owner.ask("/api/compare").json().get("run");
            while (run.get("state").asText().equals("underway")) {
                Thread.sleep(200);
                run = owner.ask("/api/compare").json().get("run");
            }

            assertThat(run.get("state").asText()).isEqualTo("made");
            ComparisonOrder order = new ComparisonOrder(
                    folder,
                    List.of(List.of(folder.resolve("second-R1.json"))),
                    new SpringRange(1, 2),
                    0,
                    0,
                    false,
                    5_000,
                    1,
                    1);
            List<String> lines = ComparisonReport.lines(SeasonComparison.of(order, SpringProgress.SILENT));
            assertThat(run.get("lines")).hasSameSizeAs(lines);
            for (int i = 0; i < lines.size(); i++) {
                assertThat(run.get("lines").get(i).asText()).isEqualTo(lines.get(i));
            }
        }
    }

    @Test
    void withoutAWeatherRecordItIsToldWhereToChooseOne() throws IOException, InterruptedException {
        SeasonCopy season = SeasonCopy.of("spring", folder);
        try (Desk desk = Desk.open(new DeskOrder(season.given(), SeasonCopy.IN_ANOTHER_YEAR, 0, false))) {
            DeskClient owner = new DeskClient(desk.link());
            DeskClient.Answer refused = owner.tell("/api/compare/start", "{'springs': 2, 'secondLike': 'R1'}");
            assertThat(refused + ended(owner) + owner.ask("/api/compare"))
                    .contains("The season names no weather record. Choose a station's file under Season, Weather.");
        }
    }

    private static String ended(DeskClient owner) throws InterruptedException {
        String state = "underway";
        while (state.equals("underway")) {
            Thread.sleep(100);
            state = owner.ask("/api/compare").json().at("/run/state").asText();
        }
        return state;
    }

    @Test
    void aComparisonThatIsStoppedLeavesNothingBehind() throws IOException, InterruptedException {
        SeasonCopy season = SeasonCopy.of("weather-spring", folder);
        String[] before = sorted(folder);
        try (Desk desk = Desk.open(new DeskOrder(season.given(), SeasonCopy.IN_ANOTHER_YEAR, 0, false))) {
            DeskClient owner = new DeskClient(desk.link());
            owner.tell("/api/compare/start", "{'springs': 1000, 'secondLike': 'R1'}");
            assertThat(folder.resolve("second-R1.json")).exists();
            owner.tell("/api/compare/stop", "{}");
            assertThat(ended(owner)).isEqualTo("stopped");
            assertThat(sorted(folder)).isEqualTo(before);
        }
    }

    @Test
    void aDeskThatIsClosedStopsItsComparison() throws IOException {
        SeasonCopy season = SeasonCopy.of("weather-spring", folder);
        String[] before = sorted(folder);
        try (Desk desk = Desk.open(new DeskOrder(season.given(), SeasonCopy.IN_ANOTHER_YEAR, 0, false))) {
            new DeskClient(desk.link()).tell("/api/compare/start", "{'springs': 1000, 'secondLike': 'R1'}");
        }
        assertThat(sorted(folder)).isEqualTo(before);
    }

    @Test
    void aComparisonThatIsRefusedLeavesNothingBehind() throws IOException, InterruptedException {
        SeasonCopy season = SeasonCopy.of("first-season", folder); // it has no weather record
        String[] before = sorted(folder);
        try (Desk desk = Desk.open(new DeskOrder(season.given(), SeasonCopy.IN_ANOTHER_YEAR, 0, false))) {
            DeskClient owner = new DeskClient(desk.link());
            owner.tell("/api/compare/start", "{'springs': 20, 'secondLike': 'R1'}");
            assertThat(ended(owner)).isEqualTo("failed");
            assertThat(sorted(folder)).isEqualTo(before);
        }
    }

    @Test
    void aVariantThatWasThereBeforeStays() throws IOException, InterruptedException {
        SeasonCopy season = SeasonCopy.of("weather-spring", folder);
        Path variant = Files.writeString(folder.resolve("second-R1.json"), "{\"rigs\": {}}\n");
        try (Desk desk = Desk.open(new DeskOrder(season.given(), SeasonCopy.IN_ANOTHER_YEAR, 0, false))) {
            DeskClient owner = new DeskClient(desk.link());
            owner.tell("/api/compare/start", "{'springs': 1000, 'secondLike': 'R1'}");
            owner.tell("/api/compare/stop", "{}");
            assertThat(ended(owner)).isEqualTo("stopped");
            assertThat(variant).hasContent("{\"rigs\": {}}\n");
        }
    }

    private static String[] sorted(Path folder) {
        String[] names = folder.toFile().list();
        Arrays.sort(names);
        return names;
    }
}

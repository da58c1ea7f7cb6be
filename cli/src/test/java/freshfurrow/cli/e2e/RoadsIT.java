package freshfurrow.cli.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.roads.GridMap;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A season of acres and miles, with a weather record, whose distances come from a map of roads. */
final class RoadsIT {
    private static final int FIELDS = 8;

    @TempDir
    private Path folder = Path.of("");

    /** At the first time on a terminal only, and never among what is printed. */
    @Test
    void aTerminalIsToldThatAMapIsReadAndKept() throws Exception {
        byRoads();
        Launcher.Result first = check("true");
        Launcher.Result second = check("true");
        Path measured = folder.resolve("roads-measured");
        try (var files = Files.walk(measured)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
        Launcher.Result piped = check("false");

        assertThat(first.err())
                .contains(
                        "\rReading the map of roads county.osm; it is kept for the next time",
                        "\rMeasuring the roads between 11 places; they are kept for the next time")
                .endsWith("\r");
        assertThat(second.err()).isEmpty();
        assertThat(piped.err()).isEmpty();
        assertThat(piped.out()).isEqualTo(first.out()).isEqualTo(second.out()).contains("Roads (`travel.roads`)");
    }

    private void byRoads() throws Exception {
        Path scenario = Path.of(Launcher.scenario("weather-spring"));
        for (String name : List.of("season.yaml", "fields.csv", "two-rigs.yaml", "station.csv")) {
            Files.copy(scenario.resolve(name), folder.resolve(name));
        }
        Path fields = folder.resolve("fields.csv");
        Files.write(fields, Files.readAllLines(fields).subList(0, FIELDS + 1));
        Files.writeString(folder.resolve("county.osm"), GridMap.xml(41.0, -96.9, 41.4, -96.3, 0.0125));
        Path file = folder.resolve("season.yaml");
        String travel = "\ntravel: {roads: county.osm, width: 14 ft, weight: 24000 lb}\n";
        Files.writeString(file, Files.readString(file).replaceAll("(?m)^travel:.*\\R", "") + travel);
    }

    private Launcher.Result check(String terminal) throws Exception {
        return Launcher.result(Launcher.start(
                folder,
                Map.of("FRESHFURROW_TERMINAL", terminal),
                List.of(Launcher.path().toString(), "check", folder.toString())));
    }

    @Test
    void everyCommandWorksByRoads() throws Exception {
        byRoads();
        String season = folder.toString();
        String plan = folder.resolve("plan").toString();

        for (List<String> command : List.of(
                List.of("plan", season, "--steps", "100", "--seed", "1"),
                List.of("audit", season, plan),
                List.of("day", plan, "2027-04-27"),
                List.of("sheets", plan),
                List.of("export", plan),
                List.of("log", season, "rain", "0.3in", "--at", "2027-04-27T03:00"),
                List.of("replan", season, "--plan", plan, "--now", "2027-04-28T06:00", "--steps", "50"),
                List.of("audit", season, plan),
                List.of(
                        "compare",
                        season,
                        "--variant",
                        season + "/two-rigs.yaml",
                        "--springs",
                        "2",
                        "--steps",
                        "20"))) {
            Launcher.Result result = InProcess.run(command.toArray(String[]::new));
            assertThat(result.exitCode()).as(command + result.all()).isZero();
        }
        assertThat(InProcess.run("check", season).out())
                .contains(
                        "Roads (`travel.roads`)",
                        "  machines as they drive: 14.0 ft wide, 24,000 lb",
                        "Roads: the map may be wrong or old.");
        assertThat(Files.readString(folder.resolve("plan/plan.html"))).contains("\"ways\":[[");
    }
}

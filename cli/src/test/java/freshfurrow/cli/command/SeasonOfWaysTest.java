package freshfurrow.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A season that tells the ways between its places and not where they are, with the usual rates, drum and batch: common practice, no
 * source.
 */
final class SeasonOfWaysTest {
    private static final String SEASON = """
            season: {name: By ways alone, first: 2027-04-19, last: 2027-05-08, timezone: America/Chicago}
            hours: ["07:00/12:00", "12:30/20:00"]
            places: {yard: {}}
            recipes:
              standard: {mix: 20 gal/ac, compost: 2 lb/ac, hold: 5 h}
            crops:
              corn: {window: 2027-04-20/2027-05-01}
            fields:
              N40: {area: 42 ac, crop: corn}
              S80: {area: 78 ac, crop: corn}
            planters:
              P1: {width: 40 ft, rowSpacing: 30 in, speed: 5 mph, fieldEfficiency: 0.65, tank: 600 gal, roadSpeed: 15 mph,
                   fillSetup: 6 min, moveTime: 12 min, at: yard}
            rigs:
              R1: {drum: 40 gal, batchCompost: 30 lb, batchTime: 15 min, cleanTime: 3 min, nurseTank: 1200 gal,
                   transferRate: 60 gal/min, roadSpeed: 35 mph, extractAt: field, at: yard}
            waterPoints:
              well: {flow: 40 gal/min}
            compost:
              windrow: {mass: 4000 lb, from: 2027-04-01}
            travel: {matrix: ways.csv}
            """;
    private static final String WAYS = """
            from,to,distance
            yard,N40,2 mi
            yard,S80,3 mi
            yard,well,1 mi
            N40,S80,4 mi
            N40,well,2 mi
            S80,well,3 mi
            """;

    @TempDir
    private Path folder = Path.of("");

    @Test
    void everyCommandWorksWithoutCoordinates() throws IOException {
        Files.writeString(folder.resolve("season.yaml"), SEASON);
        Files.writeString(folder.resolve("ways.csv"), WAYS);
        String season = folder.toString();
        String plan = folder.resolve("plan").toString();

        for (List<String> command : List.of(
                List.of("check", season),
                List.of("plan", season, "--steps", "20"),
                List.of("page", plan, "--force"),
                List.of("day", plan, "2027-04-20"),
                List.of("sheets", plan),
                List.of("export", plan),
                List.of("why", plan, "S80"),
                List.of("audit", season, plan),
                List.of("log", season, "planted", "N40", "42ac", "--at", "2027-04-20T11:00"),
                List.of("replan", season, "--plan", plan, "--now", "2027-04-20T11:00", "--steps", "20"),
                List.of("why", plan, "S80"),
                List.of("trace", season, "--field", "N40"))) {
            assertThat(run(command)).as(String.join(" ", command)).isEqualTo("0: ");
        }
    }

    @Test
    void whySaysOfAFieldThatIsFinishedThatItIs() throws IOException {
        Files.writeString(folder.resolve("season.yaml"), SEASON);
        Files.writeString(folder.resolve("ways.csv"), WAYS);
        String season = folder.toString();
        String plan = folder.resolve("plan").toString();
        run(List.of("plan", season, "--steps", "20"));
        run(List.of("log", season, "planted", "N40", "42ac", "--at", "2027-04-20T11:00"));
        run(List.of("replan", season, "--plan", plan, "--now", "2027-04-20T11:00", "--steps", "20"));

        assertThat(run(List.of("why", plan, "N40")).strip())
                .isEqualTo("1: N40 was finished before this plan starts; 'freshfurrow trace' has its record");
    }

    /** The exit code, and what is said on standard error but for the progress. */
    private static String run(List<String> command) {
        StringWriter err = new StringWriter();
        int code = Freshfurrow.commandLine()
                .setOut(new PrintWriter(new StringWriter()))
                .setErr(new PrintWriter(err))
                .execute(command.toArray(String[]::new));
        return code + ": " + err;
    }
}

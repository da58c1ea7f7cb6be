package freshfurrow.cli.browser;

import freshfurrow.app.CopiedFolder;
import freshfurrow.app.input.GivenSeason;
import freshfurrow.app.input.SeasonClock;
import freshfurrow.cli.command.Freshfurrow;
import freshfurrow.desk.Desk;
import freshfurrow.desk.DeskOrder;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;

/** Desks with copies of seasons on them. */
final class Desks {
    private Desks() {}

    /** A copy of a scenario, which tests may change. */
    static Path copyOf(String scenario, Path folder) {
        return CopiedFolder.of(Path.of("..", "scenarios", scenario), folder.resolve(scenario));
    }

    /** A copy of a scenario with a plan that is made at once. */
    static Path plannedCopyOf(String scenario, Path folder) {
        Path season = copyOf(scenario, folder);
        plan(season);
        return season;
    }

    static void plan(Path season) {
        int code = Freshfurrow.run(
                new PrintWriter(new StringWriter()),
                new PrintWriter(System.err, true, StandardCharsets.UTF_8),
                "plan",
                season.toString(),
                "--steps",
                "0",
                "--seed",
                "1");
        if (code != 0) {
            throw new IllegalStateException("no plan of " + season);
        }
    }

    /** A desk at which it is that time by the clock of Chicago, as in the scenarios. */
    static Desk open(Path season, String time) {
        return open(season, time, 0, false);
    }

    /** One that phones open too, on a port of its own. */
    static Desk openShared(Path season, String time, int port) {
        return open(season, time, port, true);
    }

    /** What a phone opens it with; by the name that the browser of tests reaches this computer by. */
    static String crewLink(Desk desk, Path season) {
        try {
            String secret =
                    Files.readString(season.resolve(".freshfurrow-crew")).strip();
            return desk.link().replaceAll("key=.*", "key=" + secret);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static int port(Desk desk) {
        return URI.create(desk.link()).getPort();
    }

    private static Desk open(Path season, String time, int port, boolean shared) {
        ZoneId farm = ZoneId.of("America/Chicago");
        Clock clock = Clock.fixed(LocalDateTime.parse(time).atZone(farm).toInstant(), farm);
        try {
            return Desk.open(new DeskOrder(new GivenSeason(season, List.of()), new SeasonClock(clock), port, shared));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

package freshfurrow.cli.browser;

import freshfurrow.app.input.GivenSeason;
import freshfurrow.app.input.SeasonClock;
import freshfurrow.desk.Desk;
import freshfurrow.desk.DeskOrder;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.Stream;

/** Desks with copies of seasons on them. */
final class Desks {
    private Desks() {}

    /** A copy of a scenario, which tests may change. */
    static Path copyOf(String scenario, Path folder) {
        return copy(Path.of("..", "scenarios", scenario), folder.resolve(scenario));
    }

    static Path copy(Path season, Path folder) {
        try (Stream<Path> files = Files.list(season)) {
            Files.createDirectories(folder);
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, folder.resolve(file.getFileName()));
            }
            return folder;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A desk at which it is that time by the clock of Chicago, as in the scenarios. */
    static Desk open(Path season, String time) {
        ZoneId farm = ZoneId.of("America/Chicago");
        Clock clock = Clock.fixed(LocalDateTime.parse(time).atZone(farm).toInstant(), farm);
        try {
            return Desk.open(new DeskOrder(new GivenSeason(season, List.of()), new SeasonClock(clock), 0, false));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

package freshfurrow.app;

import freshfurrow.app.input.GivenSeason;
import freshfurrow.app.input.SeasonClock;
import freshfurrow.model.progress.News;
import freshfurrow.solver.PlanningOptions;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;

/** A copy of a scenario that tests may change, at a time that is no day of its season. */
public record SeasonCopy(Path folder) {
    public static final SeasonClock IN_ANOTHER_YEAR =
            new SeasonClock(Clock.fixed(Instant.parse("2020-01-01T00:00:00Z"), ZoneOffset.UTC));
    public static final News NO_NEWS = new News(List.of(), List.of(), Set.of());

    public static SeasonCopy of(String scenario, Path folder) {
        return new SeasonCopy(CopiedFolder.of(Path.of("..", "scenarios", scenario), folder));
    }

    public GivenSeason given() {
        return new GivenSeason(folder, List.of());
    }

    public Path plans() {
        return folder.resolve("plan");
    }

    /** Changes the season file; what is to be replaced has to be there. */
    public void change(String from, String to) {
        try {
            Path file = folder.resolve("season.yaml");
            String text = Files.readString(file);
            if (!text.contains(from)) {
                throw new IllegalArgumentException("the season file has no " + from);
            }
            Files.writeString(file, text.replace(from, to));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A short search that is the same each time. */
    public static PlanningOptions options() {
        return new PlanningOptions(Optional.empty(), OptionalLong.of(20), 1);
    }
}

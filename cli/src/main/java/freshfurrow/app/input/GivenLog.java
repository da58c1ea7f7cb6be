package freshfurrow.app.input;

import freshfurrow.app.refusal.InputRefusal;
import freshfurrow.app.refusal.Refused;
import freshfurrow.model.log.LogContext;
import freshfurrow.model.read.LogReader;
import freshfurrow.model.read.LogReading;
import freshfurrow.model.season.Season;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A season's log; one that is not there yet is empty.
 *
 * @param file where it is
 * @param named whether that was said, and is not just where logs are
 */
public record GivenLog(Path file, boolean named) {
    /** The log that is named, or the one beside the season file. */
    public static GivenLog of(GivenSeason season, Optional<Path> named) {
        return new GivenLog(named.orElseGet(() -> LogReader.beside(season.path())), named.isPresent());
    }

    /**
     * What the log says.
     *
     * @throws Refused with every problem, when the log cannot be used
     */
    public LogReading.Valid read(LogContext context) {
        LogReading reading = LogReader.read(file, context);
        if (reading instanceof LogReading.Invalid invalid) {
            throw new Refused(new InputRefusal.ProblemsFound(invalid.problems()));
        }
        return (LogReading.Valid) reading;
    }

    /**
     * The log as a season is planned by it.
     *
     * @throws Refused with every problem when it cannot be used, or when it was named and is not there
     */
    public LogReading.Valid toPlanBy(Season season) {
        if (named && !Files.exists(file)) {
            throw new Refused(new InputRefusal.NoLog(file));
        }
        return read(LogContext.of(season));
    }
}

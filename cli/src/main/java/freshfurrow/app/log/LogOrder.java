package freshfurrow.app.log;

import freshfurrow.app.input.GivenPlan;
import freshfurrow.app.input.GivenSeason;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Optional;

/**
 * A season with its log.
 *
 * @param file the log; without it, the one beside the season file
 * @param plan whose loads the log speaks of; without it, the one in the folder {@code plan} beside the season file, if there is one
 * @param changed whether the season's files may have changed since that plan was made
 * @param now local time; without it, the clock, on a day of the season
 */
public record LogOrder(
        GivenSeason season,
        Optional<Path> file,
        Optional<GivenPlan> plan,
        boolean changed,
        Optional<LocalDateTime> now) {}

package freshfurrow.cli.command;

import freshfurrow.cli.text.LogText;
import freshfurrow.model.log.Column;
import freshfurrow.model.log.FactKind;
import freshfurrow.model.log.LogContext;
import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.read.LogReader;
import freshfurrow.model.read.LogReading;
import freshfurrow.model.season.Season;
import freshfurrow.model.write.LogWriter;
import freshfurrow.model.write.LogWriting;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** A season with its log. */
final class LogArguments {
    private final SeasonClock clock = new SeasonClock(Clock.systemUTC());

    @Mixin
    private SeasonArgument season = new SeasonArgument();

    @Option(names = "--log", paramLabel = "FILE", description = "the log (default: log.csv beside the season file)")
    private Optional<Path> file = Optional.empty();

    @Option(
            names = "--plan",
            paramLabel = "PLAN",
            description =
                    "the plan whose loads are meant, a file or a folder that holds plan.json (default: folder plan beside the season file)")
    private Optional<Path> plan = Optional.empty();

    @Option(
            names = "--now",
            paramLabel = "TIME",
            converter = MomentConverter.class,
            description = "what time it is, as 2027-05-03T15:10 (default: the clock, on a day of the season)")
    private Optional<LocalDateTime> now = Optional.empty();

    /** @throws Refusal with every problem, when the season cannot be used */
    Season season() {
        return season.read().season();
    }

    /** @throws Refusal with every problem, when season or log cannot be used */
    SeasonLog read(Season read) {
        return valid(LogReader.read(path(), context(read, true)));
    }

    /** The plan, when there is one. */
    Optional<Plan> plan() {
        return Files.exists(PlanArgument.file(planPath())) || plan.isPresent()
                ? Optional.of(PlanArgument.read(planPath()))
                : Optional.empty();
    }

    /**
     * Adds a line to the log.
     *
     * @return what to tell
     * @throws Refusal with every problem, when season, log or line is wrong
     */
    List<String> add(Map<Column, String> cells) {
        Season read = season();
        cells.computeIfAbsent(Column.AT, column -> time(read, cells).toString());
        LogContext context = context(read, cells.containsKey(Column.LOAD));
        try {
            LogWriting writing = new LogWriter(path(), context).add(cells);
            if (writing instanceof LogWriting.Refused refused) {
                throw new Refusal(
                        refused.problems().stream().map(Object::toString).toList());
            }
            LogWriting.Added added = (LogWriting.Added) writing;
            return LogText.added(read, added.log(), added.entry());
        } catch (IOException e) {
            throw new Refusal(path() + ": cannot be written (" + Failures.reason(e) + "), so nothing was added");
        }
    }

    private static SeasonLog valid(LogReading reading) {
        if (reading instanceof LogReading.Invalid invalid) {
            throw new Refusal(invalid.problems().stream().map(Object::toString).toList());
        }
        return ((LogReading.Valid) reading).log();
    }

    private LogContext context(Season read, boolean checkLoads) {
        LocalDateTime latest =
                now.or(() -> clock.inSeason(read)).orElse(LogContext.of(read).latest());
        Optional<Set<String>> loads = checkLoads ? Optional.of(PlannedLoads.of(planPath())) : Optional.empty();
        return new LogContext(read, loads, latest);
    }

    private LocalDateTime time(Season read, Map<Column, String> cells) {
        if (FactKind.TAKEBACK.word().equals(cells.get(Column.FACT))) {
            return clock.now(read);
        }
        return now.or(() -> clock.inSeason(read))
                .orElseThrow(() -> new Refusal("Today is no day of the season, which goes from " + read.first() + " to "
                        + read.last() + "; say when it was with --at, as --at " + read.first() + "T15:10"));
    }

    private Path path() {
        return file.orElseGet(() -> LogReader.beside(season.path()));
    }

    private Path planPath() {
        return plan.orElseGet(() -> season.folder().resolve("plan"));
    }
}

package freshfurrow.cli.command;

import freshfurrow.app.input.KnownLoads;
import freshfurrow.app.input.PlanChoice;
import freshfurrow.app.input.PlanOrigin;
import freshfurrow.app.input.SeasonClock;
import freshfurrow.cli.text.LogText;
import freshfurrow.model.files.ObstructedFile;
import freshfurrow.model.log.Column;
import freshfurrow.model.log.Fact;
import freshfurrow.model.log.FactKind;
import freshfurrow.model.log.LogContext;
import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.read.LogReader;
import freshfurrow.model.read.LogReading;
import freshfurrow.model.read.ProblemLines;
import freshfurrow.model.read.Reading;
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
    Reading.Valid season() {
        return season.read();
    }

    /** @throws Refusal with every problem, when the log cannot be used, or the plan of its loads is of another season */
    SeasonLog read(Reading.Valid read) {
        return valid(LogReader.read(path(), context(read, true)));
    }

    /**
     * The plan, when there is one.
     *
     * @throws Refusal when it cannot be read or is of another season
     */
    Optional<Plan> plan(Reading.Valid read) {
        Path planFile = PlanChoice.file(planPath());
        if (!Files.exists(planFile) && plan.isEmpty()) {
            return Optional.empty();
        }
        Plan its = PlanChoice.read(planPath());
        PlanOrigin.mustBeOf(read, planFile, its);
        return Optional.of(its);
    }

    /**
     * Adds a line to the log.
     *
     * @return what to tell
     * @throws Refusal with every problem, when season, log or line is wrong
     */
    List<String> add(Map<Column, String> cells) {
        Reading.Valid valid = season();
        Season read = valid.season();
        cells.computeIfAbsent(Column.AT, column -> time(read, cells).toString());
        LogContext context = context(valid, cells.containsKey(Column.LOAD) || plantsLoads(valid));
        try {
            LogWriting writing = new LogWriter(path(), context).add(cells);
            if (writing instanceof LogWriting.Refused refused) {
                throw new Refusal(ProblemLines.of(refused.problems()));
            }
            LogWriting.Added added = (LogWriting.Added) writing;
            return LogText.added(read, added.log(), added.entry());
        } catch (ObstructedFile e) {
            throw new Refusal(
                    path() + ": " + e.getReason() + ", so nothing was added; name the log itself with --log FILE");
        } catch (IOException e) {
            throw new Refusal(path() + ": cannot be written (" + Failures.reason(e) + "), so nothing was added");
        }
    }

    /** Whether the log speaks of loads, which only plans know; a log that does not needs no plan that can be read. */
    private boolean plantsLoads(Reading.Valid read) {
        return LogReader.read(path(), context(read, false)) instanceof LogReading.Valid logged
                && logged.log().standing().stream()
                        .anyMatch(entry -> entry.fact() instanceof Fact.Planted planted
                                && planted.load().isPresent());
    }

    private static SeasonLog valid(LogReading reading) {
        if (reading instanceof LogReading.Invalid invalid) {
            throw new Refusal(ProblemLines.of(invalid.problems()));
        }
        return ((LogReading.Valid) reading).log();
    }

    private LogContext context(Reading.Valid valid, boolean checkLoads) {
        Season read = valid.season();
        LocalDateTime latest =
                now.or(() -> clock.inSeason(read)).orElse(LogContext.of(read).latest());
        Optional<Set<String>> loads = checkLoads ? Optional.of(KnownLoads.of(valid, planPath())) : Optional.empty();
        return new LogContext(read, loads, latest);
    }

    private LocalDateTime time(Season read, Map<Column, String> cells) {
        if (FactKind.VOID.word().equals(cells.get(Column.FACT))) {
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

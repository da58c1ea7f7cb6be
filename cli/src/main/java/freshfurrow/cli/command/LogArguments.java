package freshfurrow.cli.command;

import freshfurrow.app.input.GivenPlan;
import freshfurrow.app.input.SeasonClock;
import freshfurrow.app.learn.Learned;
import freshfurrow.app.log.LogOrder;
import freshfurrow.app.log.Logbook;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** A season with its log. */
final class LogArguments {
    @Mixin
    private SeasonArgument season = new SeasonArgument();

    @Option(names = "--log", paramLabel = "FILE", description = "the log (default: log.csv beside the season file)")
    private Optional<Path> file = Optional.empty();

    @Option(
            names = "--plan",
            paramLabel = "PLAN",
            description =
                    "the plan that the loads are in, a file or a folder with plan.json (default: folder plan beside the season file)")
    private Optional<Path> plan = Optional.empty();

    @Option(
            names = "--now",
            paramLabel = "TIME",
            converter = MomentConverter.class,
            description = "the time now, like 2027-05-03T15:10 (default: the clock, on a day of the season)")
    private Optional<LocalDateTime> now = Optional.empty();

    Logbook logbook() {
        return new Logbook(order(false), clock());
    }

    /** What the log teaches, whether or not the season's files have changed since the plan was made. */
    Learned learned() {
        return Learned.by(order(true), clock());
    }

    private LogOrder order(boolean changed) {
        return new LogOrder(season.given(), file, plan.map(GivenPlan::new), changed, now);
    }

    private static SeasonClock clock() {
        return new SeasonClock(Clock.systemUTC());
    }
}

package freshfurrow.cli.command;

import freshfurrow.solver.PlanningOptions;
import java.time.Duration;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** How a season is planned, and what is written of it: the same for one season and for many. */
final class PlanningChoices {
    @Option(
            names = "--time",
            paramLabel = "TIME",
            converter = TimeConverter.class,
            description =
                    "how long a plan may take, reading and writing included, like 30s, 5min or 1h (default: 30s, unless --steps is given)")
    private Optional<Duration> time = Optional.empty();

    @Mixin
    private SearchOptions search = new SearchOptions();

    @Mixin
    private ThreadsOption threads = new ThreadsOption();

    @Option(names = "--no-page", description = "write plan.json only, without plan.html, the page for a browser")
    private boolean noPage;

    @Option(names = "--force", description = "replace the plan that is there")
    private boolean force;

    PlanningOptions options() {
        return new PlanningOptions(time, search.steps(), search.seed(), threads.count());
    }

    boolean withPage() {
        return !noPage;
    }

    boolean force() {
        return force;
    }
}

package freshfurrow.cli.command;

import freshfurrow.app.input.GivenPlan;
import freshfurrow.app.input.SeasonClock;
import freshfurrow.app.planning.Replanned;
import freshfurrow.app.planning.ReplanningOrder;
import freshfurrow.app.planning.SeasonReplanning;
import freshfurrow.cli.words.PlanningReport;
import freshfurrow.model.progress.News;
import freshfurrow.solver.PlanningOptions;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

@Command(
        name = "replan",
        header = "Replan the rest of a season after rain, a breakdown or new log entries.",
        description =
                "%nAssumes that the plan was followed until now, or until something happened that it did not know of, except where the log says otherwise, and plans the rest from where the machines stand. The next days stay as they were unless that costs much. With nothing new, the plan stays the same.%n",
        footer = {
            "  freshfurrow replan scenarios/spring --plan plan --rain 2027-04-30T10:00=0.8in",
            "  freshfurrow replan scenarios/metric --plan plan --rain 2027-04-20T10:00=20mm",
            "  freshfurrow replan season.yaml --plan plan \\",
            "      --down R1=2027-05-04T00:00/2027-05-05T12:00",
            "  freshfurrow replan season.yaml --plan plan \\",
            "      --now 2027-05-04T06:00 --spoiled windrow"
        })
final class ReplanCommand implements Callable<Integer> {
    static final Duration USUAL_TIME = Duration.ofSeconds(5);

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private SeasonArgument season = new SeasonArgument();

    @Option(
            names = "--plan",
            paramLabel = "PLAN",
            required = true,
            description = "the plan that was followed: a plan file, or a folder with plan.json")
    private Path plan = Path.of("");

    @Option(
            names = "--season-changed",
            description =
                    "the season file was changed after that plan was made; take the plan as the one that was followed all the same")
    private boolean changed;

    @Option(
            names = "--now",
            paramLabel = "TIME",
            description =
                    "local date and time to replan from (default: the time now, if it is in the season; otherwise the latest time in the log, --rain and --down)")
    private Optional<String> now = Optional.empty();

    @Option(
            names = "--rain",
            paramLabel = "TIME=DEPTH",
            description = "rain that fell or is sure to fall, and when it started; may be repeated")
    private List<String> rain = new ArrayList<>();

    @Option(
            names = "--down",
            paramLabel = "MACHINE=FROM/UNTIL",
            description = "a planter, sprayer or rig that is down; may be repeated")
    private List<String> down = new ArrayList<>();

    @Option(
            names = "--spoiled",
            paramLabel = "LOT",
            description = "a compost lot that can no longer be used; may be repeated")
    private List<String> spoiled = new ArrayList<>();

    @Option(
            names = "--log",
            paramLabel = "FILE",
            description = "the season's log (default: log.csv in the folder of the season file, if there is one)")
    private Optional<Path> log = Optional.empty();

    @Option(names = "--only-logged", description = "count nothing as done that is not in the log")
    private boolean onlyLogged;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description =
                    "folder for plan.json, plan.html and plans, which keeps every plan (default: the folder of PLAN)")
    private Optional<Path> out = Optional.empty();

    @Option(
            names = "--time",
            paramLabel = "TIME",
            converter = TimeConverter.class,
            description =
                    "how long it may take, reading and writing included, like 5s or 1min (default: 5s, unless --steps is given)")
    private Optional<Duration> time = Optional.empty();

    @Mixin
    private SearchOptions search = new SearchOptions();

    @Option(names = "--no-page", description = "write no plan.html, the page for a browser")
    private boolean noPage;

    @Option(
            names = "--force",
            description = "replace a plan.json or plan.html in DIR that is not from the plan that was followed")
    private boolean force;

    @Override
    public Integer call() {
        return Interruption.outlivedBy(spec, this::replan);
    }

    private int replan(Interruption interruption) {
        ReplanningOrder order = new ReplanningOrder(
                season.given(),
                new GivenPlan(plan),
                changed,
                now.map(text -> NewsText.moment("--now", text)),
                news(),
                log,
                onlyLogged,
                options(),
                out,
                !noPage,
                force);
        Replanned replanned = SeasonReplanning.replan(
                order, new SeasonClock(Clock.systemUTC()), interruption.stop(), new PlanningProgress(interruption));
        Output.print(spec, PlanningReport.lines(replanned));
        return Freshfurrow.OK;
    }

    private PlanningOptions options() {
        OptionalLong steps = search.steps();
        Optional<Duration> most = time.or(() -> steps.isPresent() ? Optional.empty() : Optional.of(USUAL_TIME));
        return new PlanningOptions(most, steps, search.seed());
    }

    private News news() {
        return new News(
                rain.stream().map(NewsText::rain).toList(),
                down.stream().map(NewsText::down).toList(),
                new LinkedHashSet<>(spoiled));
    }
}

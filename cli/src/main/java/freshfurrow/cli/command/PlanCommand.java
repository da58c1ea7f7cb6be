package freshfurrow.cli.command;

import freshfurrow.app.input.PlanChoice;
import freshfurrow.app.output.PlanTarget;
import freshfurrow.app.output.PlanText;
import freshfurrow.app.planning.OwnAudit;
import freshfurrow.app.planning.PlanPage;
import freshfurrow.app.planning.PlanningRun;
import freshfurrow.app.planning.TimeTaken;
import freshfurrow.cli.page.SeasonPage;
import freshfurrow.cli.text.PlanReport;
import freshfurrow.model.files.IfThere;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.read.Reading;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import freshfurrow.solver.PlanningOptions;
import freshfurrow.solver.SeasonPlanner;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

@Command(
        name = "plan",
        header = "Plan a season, audit the plan, write it with its page, and print the season by day.",
        description =
                "%nPlanning ends when its time is over, or when nothing got better for a while, or with Ctrl-C: the best plan so far is kept. The time is that of all, from the start to the files written; thousands of fields may take longer than a short time. The same --seed and --steps give the same plan, byte for byte, on every run and any number of threads; with --time that is not certain.%n",
        footer = {
            "  freshfurrow plan scenarios/first-season",
            "  freshfurrow plan season.yaml --variant two-rigs.yaml --out two-rigs",
            "  freshfurrow plan season.yaml --time 5min --force",
            "  freshfurrow plan season.yaml --steps 20000 --seed 7 --out repeatable"
        })
final class PlanCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private SeasonArgument season = new SeasonArgument();

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description =
                    "folder for plan.json and plan.html, made when missing (default: folder plan beside the season file)")
    private Optional<Path> out = Optional.empty();

    @Option(
            names = "--time",
            paramLabel = "TIME",
            converter = TimeConverter.class,
            description =
                    "how long all may take, reading and writing too, as 30s, 5min or 1h (default: 30s, unless --steps is given)")
    private Optional<Duration> time = Optional.empty();

    @Mixin
    private SearchOptions search = new SearchOptions();

    @Option(
            names = "--threads",
            paramLabel = "N",
            defaultValue = "" + PlanningOptions.DEFAULT_THREADS,
            description =
                    "on how many threads to search, 1 or more; more than 2 bring nothing, and with --steps the plan is the same (default: ${DEFAULT-VALUE})")
    private int threads;

    @Option(names = "--no-page", description = "write plan.json only, without plan.html, the page for a browser")
    private boolean noPage;

    @Option(names = "--force", description = "replace a plan that is already there")
    private boolean force;

    @Override
    public Integer call() {
        return Interruption.outlivedBy(spec, this::plan);
    }

    private int plan(Interruption interruption) {
        TimeTaken taken = new TimeTaken();
        PlanningOptions options = options();
        Reading.Valid read = season.read();
        PlanTarget target = PlanTarget.in(
                out.orElseGet(() -> season.folder().resolve("plan")),
                IfThere.replaceIf(force),
                noPage ? new String[0] : new String[] {PageCommand.FILE_NAME});
        interruption.keep();
        CompiledSeason compiled = CompiledSeason.of(read.season());
        taken.endOf("reading");
        Plan.SeasonSource source = Plan.SeasonSource.of(read.season(), read.file(), read.sha256());
        PlanningRun.Finished finished = new PlanningRun(compiled, options, interruption, taken)
                .plan(SeasonPlanner::plan, lists -> PlanRecorder.record(compiled, lists, source));
        Plan plan = finished.plan();
        OwnAudit.pass(read.season(), plan, "season file");
        taken.endOf("audit");
        String text = PlanText.of(plan);
        // from the plan as the file has it, so that `page` makes the same again
        Optional<String> page = noPage
                ? Optional.empty()
                : PlanPage.inTime(
                        interruption,
                        compiled.fieldCount(),
                        () -> SeasonPage.html(read.season(), PlanChoice.asWritten(target.file(), text)));
        taken.endOf("page");
        target.write(text, page);
        taken.endOf("writing");
        List<String> lines = new ArrayList<>(PlanReport.lines(read.season(), plan));
        lines.add("");
        finished.stopped().ifPresent(lines::add);
        if (!noPage && page.isEmpty()) {
            lines.add(PlanPage.missing(target.file()));
        }
        lines.add("Written to " + target.file()
                + (page.isPresent() ? ", with " + PageCommand.FILE_NAME + " beside it for a browser" : ""));
        lines.add(taken.line());
        Output.print(spec, lines);
        return Freshfurrow.OK;
    }

    private PlanningOptions options() {
        if (threads < 1) {
            throw new ParameterException(spec.commandLine(), "--threads is 1 or more, not " + threads);
        }
        return new PlanningOptions(time, search.steps(), search.seed(), threads);
    }
}

package freshfurrow.app.planning;

import freshfurrow.app.input.PlanChoice;
import freshfurrow.app.input.PlanOrigin;
import freshfurrow.app.output.PlanArchive;
import freshfurrow.app.output.PlanText;
import freshfurrow.cli.changes.ChangesReport;
import freshfurrow.cli.command.Interruption;
import freshfurrow.cli.command.Refusal;
import freshfurrow.cli.command.SeasonOfPlan;
import freshfurrow.cli.page.SeasonPage;
import freshfurrow.cli.text.HeldBack;
import freshfurrow.cli.text.SoFarReport;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanStart;
import freshfurrow.model.progress.News;
import freshfurrow.model.progress.Promises;
import freshfurrow.model.progress.SoFar;
import freshfurrow.model.read.LogReading;
import freshfurrow.model.read.Reading;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import freshfurrow.solver.PlanningOptions;
import freshfurrow.solver.construction.FollowedLists;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Makes a plan of what is left of a season, and says what it changes. */
public final class SeasonReplanning {
    private final Reading.Valid read;
    private final Path planFile;
    private final Plan before;
    private final LogReading.Valid log;
    private final News news;
    private final boolean onlyLogged;
    private final PlanningOptions options;
    private final Interruption interruption;
    private final TimeTaken taken;

    /** @throws Refusal when the plan cannot be read or is of another season */
    public SeasonReplanning(
            Reading.Valid read,
            Path plan,
            LogReading.Valid log,
            News news,
            boolean onlyLogged,
            PlanningOptions options,
            Interruption interruption,
            TimeTaken taken) {
        this.read = read;
        this.planFile = PlanChoice.file(plan);
        this.before = PlanChoice.read(plan);
        this.log = log;
        this.news = news;
        this.onlyLogged = onlyLogged;
        this.options = options;
        this.interruption = interruption;
        this.taken = taken;
        PlanOrigin.mustBeOf(read, planFile, before);
    }

    /** Makes the plan and writes it; returns what to print. */
    public List<String> run(PlanningMoment moment, Optional<Path> out, boolean page, boolean force) {
        Season whole = read.season();
        Season plannedBefore = SeasonOfPlan.checked(planFile, before, whole);
        LocalDateTime now = moment.now();
        before.start().filter(start -> now.isBefore(start.now())).ifPresent(start -> {
            throw new Refusal(planFile + ": it begins at " + start.now() + ", after " + now
                    + "; plan from a later time on with --now, or name an earlier plan with --plan");
        });
        SoFar.Result soFar = SoFar.of(whole, before, now, news, log.log(), onlyLogged);
        PlanStart start = soFar.start()
                .withPromises(Promises.of(before, now, whole.goals().steadyDays()))
                .withLog(log.sha256());
        Season left = start.remaining(whole);
        Path folder = out.orElseGet(() -> PlanArchive.folderOf(planFile));
        PlanArchive archive = PlanArchive.in(folder, planFile, force);
        archive.refuseObstructed(page);
        interruption.keep();

        PlanningRun.Finished finished = plan(CompiledSeason.of(left), start);
        Plan plan = finished.plan();
        OwnAudit.pass(left, plan, "season file, plan and log");
        taken.endOf("audit");
        List<String> lines = new ArrayList<>(SoFarReport.lines(whole, soFar, moment));
        lines.add("");
        List<String> changes = ChangesReport.lines(left, plan, plannedBefore, before);
        lines.addAll(changes);
        lines.addAll(HeldBack.lines(plan));
        lines.add("");
        taken.endOf("changes");
        finished.stopped().ifPresent(lines::add);
        String text = PlanText.of(plan);
        Optional<String> html = page
                ? PlanPage.inTime(
                        interruption,
                        left.fields().size(),
                        () -> SeasonPage.html(left, PlanChoice.asWritten(archive.newest(), text), changes))
                : Optional.empty();
        taken.endOf("page");
        Path kept = archive.add(text, html);
        taken.endOf("writing");
        if (page && html.isEmpty()) {
            lines.add(PlanPage.missing(archive.newest()));
        }
        lines.add("Written to " + folder.resolve(PlanChoice.FILE_NAME) + ", kept as " + kept);
        lines.add(taken.line());
        return lines;
    }

    private PlanningRun.Finished plan(CompiledSeason left, PlanStart start) {
        taken.endOf("reading");
        Plan.SeasonSource source = Plan.SeasonSource.of(left.season(), read.file(), read.sha256());
        List<List<String>> followed = before.planters().values().stream()
                .map(Plan.PlanterPlan::fields)
                .toList();
        if (isNothingNew()) {
            return new PlanningRun.Finished(
                    PlanRecorder.record(
                            left,
                            FollowedLists.left(left, followed, interruption.stop())
                                    .ids(left.season()),
                            source,
                            start),
                    Optional.empty());
        }
        Function<List<List<String>>, Plan> record = lists -> PlanRecorder.record(left, lists, source, start);
        return new PlanningRun(left, options, interruption, taken).plan(planner -> planner.planFrom(followed), record);
    }

    private boolean isNothingNew() {
        boolean sameLog = before.start()
                .flatMap(PlanStart::logSha256)
                .map(log.sha256()::equals)
                .orElseGet(() -> log.log().entries().isEmpty());
        return sameLog
                && !onlyLogged
                && news.rain().isEmpty()
                && news.outages().isEmpty()
                && news.spoiledLots().isEmpty();
    }
}

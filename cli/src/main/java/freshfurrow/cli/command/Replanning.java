package freshfurrow.cli.command;

import freshfurrow.cli.changes.ChangesReport;
import freshfurrow.cli.page.SeasonPage;
import freshfurrow.cli.text.HeldBack;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanFile;
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
final class Replanning {
    private final Reading.Valid read;
    private final Path planFile;
    private final Plan before;
    private final LogReading.Valid log;
    private final News news;
    private final boolean onlyLogged;
    private final PlanningOptions options;

    /** @throws Refusal when the plan cannot be read or is of another season */
    Replanning(
            Reading.Valid read,
            Path plan,
            LogReading.Valid log,
            News news,
            boolean onlyLogged,
            PlanningOptions options) {
        this.read = read;
        this.planFile = PlanArgument.file(plan);
        this.before = PlanArgument.read(plan);
        this.log = log;
        this.news = news;
        this.onlyLogged = onlyLogged;
        this.options = options;
        PlanOrigin.mustBeOf(read, planFile, before);
    }

    /** Makes the plan and writes it; returns what to print. */
    List<String> run(PlanningMoment moment, Optional<Path> out, boolean page, boolean force) {
        Season whole = read.season();
        Season plannedBefore = SeasonOfPlan.whatItWasMadeFor(planFile, before, whole);
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

        PlanningRun.Finished finished = plan(CompiledSeason.of(left), start);
        Plan plan = finished.plan();
        OwnAudit.pass(left, plan, "season file, plan and log");
        List<String> lines = new ArrayList<>(SoFarReport.lines(whole, soFar, moment));
        lines.add("");
        List<String> changes = ChangesReport.lines(left, plan, plannedBefore, before);
        lines.addAll(changes);
        lines.addAll(HeldBack.lines(plan));
        lines.add("");
        finished.stopped().ifPresent(lines::add);
        String text = PlanFile.toJson(plan);
        Path kept = archive.add(
                text,
                page
                        ? Optional.of(SeasonPage.html(left, PlanArgument.asWritten(archive.newest(), text), changes))
                        : Optional.empty());
        lines.add("Written to " + folder.resolve(PlanArgument.FILE_NAME) + ", kept as " + kept);
        return lines;
    }

    private PlanningRun.Finished plan(CompiledSeason left, PlanStart start) {
        Plan.SeasonSource source = Plan.SeasonSource.of(left.season(), read.file(), read.sha256());
        List<List<String>> followed = before.planters().values().stream()
                .map(Plan.PlanterPlan::fields)
                .toList();
        if (isNothingNew()) {
            return new PlanningRun.Finished(
                    PlanRecorder.record(left, FollowedLists.left(left, followed).ids(left.season()), source, start),
                    Optional.empty());
        }
        Function<List<List<String>>, Plan> record = lists -> PlanRecorder.record(left, lists, source, start);
        List<PlanningRun.Finished> plans = new ArrayList<>();
        PlanningRun run = new PlanningRun(left, options, planner -> planner.planFrom(followed));
        run.keepBestOnInterrupt(lists -> {
            plans.add(run.finished(record.apply(lists), record));
            return Freshfurrow.OK;
        });
        return plans.get(0);
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

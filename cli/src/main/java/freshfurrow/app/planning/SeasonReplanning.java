package freshfurrow.app.planning;

import freshfurrow.app.input.GivenLog;
import freshfurrow.app.input.GivenPlan;
import freshfurrow.app.input.PlanOrigin;
import freshfurrow.app.input.SeasonClock;
import freshfurrow.app.input.SeasonOfPlan;
import freshfurrow.app.output.PlanArchive;
import freshfurrow.app.output.PlanPage;
import freshfurrow.app.output.PlanText;
import freshfurrow.app.refusal.InputRefusal;
import freshfurrow.app.refusal.PlanningRefusal;
import freshfurrow.app.refusal.Refused;
import freshfurrow.app.time.Stage;
import freshfurrow.app.time.StageClock;
import freshfurrow.cli.changes.ChangesReport;
import freshfurrow.cli.page.SeasonPage;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanStart;
import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.progress.Promises;
import freshfurrow.model.progress.SoFar;
import freshfurrow.model.read.LogReading;
import freshfurrow.model.read.Reading;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import freshfurrow.solver.construction.FollowedLists;
import freshfurrow.solver.stop.StopSignal;
import freshfurrow.solver.threads.Underway;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Plans what is left of a season, audits the plan, says what it changes, and writes it. */
public final class SeasonReplanning {
    private final StageClock clock = new StageClock();
    private final ReplanningOrder order;
    private final StopSignal stop;
    private final PlanningListener listener;
    private final Reading.Valid read;
    private final LogReading.Valid log;
    private final Plan before;

    private SeasonReplanning(ReplanningOrder order, StopSignal stop, PlanningListener listener) {
        this.order = order;
        this.stop = stop;
        this.listener = listener;
        Underway<Plan> followed =
                Underway.begin("reading the plan", () -> order.followed().read());
        read = order.season().read();
        log = GivenLog.of(order.season(), order.log()).toPlanBy(read.season());
        NewsCheck.pass(order.news(), read.season());
        before = followed.result();
        if (!order.changed()) {
            PlanOrigin.mustBeOf(read, order.followed().file(), before);
        }
    }

    /**
     * The plan, once it is written. Blocks as long as the options say, or until the signal is set.
     *
     * @param stop set by whoever does not want to wait any longer
     * @throws Refused when something that was given cannot be used, or the plan cannot be written or breaks a rule; then the plan that
     *     was followed still is the newest
     */
    public static Replanned replan(
            ReplanningOrder order, SeasonClock clock, StopSignal stop, PlanningListener listener) {
        return new SeasonReplanning(order, stop, listener).run(clock);
    }

    /**
     * A plan that is not written until it is taken. Blocks as long as the options say, or until the signal is set.
     *
     * @throws Refused when something that was given cannot be used, or the plan could not be written or breaks a rule
     */
    public static ProposedPlan propose(
            ReplanningOrder order, SeasonClock clock, StopSignal stop, PlanningListener listener) {
        return new SeasonReplanning(order, stop, listener).made(clock).proposed();
    }

    private Replanned run(SeasonClock seasonClock) {
        Made made = made(seasonClock);
        ProposedPlan proposed = made.proposed();
        Path kept = made.archive().add(proposed.text(), proposed.page());
        clock.endOf(Stage.WRITING);
        return new Replanned(
                read.season(),
                made.soFar(),
                made.moment(),
                proposed.plan(),
                proposed.changes(),
                made.archive().newest(),
                kept,
                PlanPage.outcome(order.withPage(), proposed.page()),
                proposed.end(),
                clock.taken());
    }

    /** A plan, what it goes out from, and where it is to come. */
    private record Made(ProposedPlan proposed, SoFar.Result soFar, PlanningMoment moment, PlanArchive archive) {}

    private Made made(SeasonClock seasonClock) {
        Season whole = read.season();
        PlanningMoment moment = PlanningMoment.of(order.now(), whole, log.log(), order.news(), seasonClock);
        LocalDateTime now = moment.now();
        Path planFile = order.followed().file();
        Season plannedBefore = SeasonOfPlan.checked(planFile, before, whole);
        before.start().filter(start -> now.isBefore(start.now())).ifPresent(start -> {
            throw new Refused(new PlanningRefusal.PlanBeginsLater(planFile, start.now(), now));
        });
        SoFar.Result soFar = soFar(whole, now);
        PlanStart start = soFar.start()
                .withPromises(Promises.of(before, now, whole.goals().steadyDays()))
                .withLog(log.sha256());
        Season left = SeasonOfPlan.leftFrom(planFile, start, whole);
        PlanArchive archive =
                PlanArchive.in(order.folder().orElseGet(() -> PlanArchive.folderOf(planFile)), planFile, order.force());
        archive.refuseObstructed(order.withPage());
        listener.begins(left);

        PlanningRun.Finished finished = plan(CompiledSeason.of(left), start);
        Plan plan = finished.plan();
        Underway<List<String>> changesUnderway =
                Underway.begin("changes", () -> ChangesReport.lines(left, plan, plannedBefore, before));
        if (PlanOrigin.isOf(read, before)) {
            OwnAudit.pass(left, plan, true);
        } else {
            OwnAudit.passAfterChange(left, plan);
        }
        clock.endOf(Stage.AUDIT);
        String text = PlanText.of(plan);
        List<String> changes = changesUnderway.result();
        clock.endOf(Stage.CHANGES);
        Optional<String> page = order.withPage()
                ? PlanPage.inTime(
                        stop,
                        left.fields().size(),
                        () -> SeasonPage.html(left, GivenPlan.asWritten(archive.newest(), text), changes))
                : Optional.empty();
        clock.endOf(Stage.PAGE);
        return new Made(
                new ProposedPlan(left, plan, text, page, changes, finished.end(), Optional.of(moment)),
                soFar,
                moment,
                archive);
    }

    private SoFar.Result soFar(Season whole, LocalDateTime now) {
        try {
            return SoFar.of(whole, before, now, order.news(), log.log(), order.onlyLogged());
        } catch (IllegalArgumentException e) {
            if (!order.changed()) {
                throw e;
            }
            throw new Refused(
                    new InputRefusal.ImpossibleStart(order.followed().file(), String.valueOf(e.getMessage())));
        }
    }

    private PlanningRun.Finished plan(CompiledSeason left, PlanStart start) {
        clock.endOf(Stage.READING);
        Plan.SeasonSource source = Plan.SeasonSource.of(left.season(), read.file(), read.sha256());
        PlantingOrders followed = PlantingOrders.of(before);
        Function<PlantingOrders, Plan> record = orders -> PlanRecorder.record(left, orders, source, start);
        if (isNothingNew()) {
            Plan same = record.apply(FollowedLists.left(left, followed, stop).orders(left.season()));
            return new PlanningRun.Finished(
                    SimulatedSeasons.withChances(left, same, order.options().threads(), stop, clock),
                    PlanningEnd.WHOLE);
        }
        return new PlanningRun(left, order.options(), stop, listener, clock)
                .plan(planner -> planner.planFrom(followed), record);
    }

    private boolean isNothingNew() {
        boolean sameLog = before.start()
                .flatMap(PlanStart::logSha256)
                .map(log.sha256()::equals)
                .orElseGet(() -> log.log().entries().isEmpty());
        return sameLog
                && PlanOrigin.isOf(read, before)
                && !order.onlyLogged()
                && order.news().rain().isEmpty()
                && order.news().outages().isEmpty()
                && order.news().spoiledLots().isEmpty();
    }
}

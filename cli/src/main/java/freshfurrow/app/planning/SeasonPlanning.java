package freshfurrow.app.planning;

import freshfurrow.app.input.GivenPlan;
import freshfurrow.app.input.GivenSeason;
import freshfurrow.app.output.PlanArchive;
import freshfurrow.app.output.PlanPage;
import freshfurrow.app.output.PlanTarget;
import freshfurrow.app.output.PlanText;
import freshfurrow.app.refusal.Refused;
import freshfurrow.app.time.Stage;
import freshfurrow.app.time.StageClock;
import freshfurrow.cli.page.SeasonPage;
import freshfurrow.model.files.IfThere;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.read.Reading;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import freshfurrow.solver.PlanningOptions;
import freshfurrow.solver.SeasonPlanner;
import freshfurrow.solver.stop.StopSignal;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Plans a season, audits the plan and writes it. */
public final class SeasonPlanning {
    /** Beside the season file, where plans go that are not meant for elsewhere. */
    public static final String FOLDER = "plan";

    private SeasonPlanning() {}

    /**
     * The plan, once it is written. Blocks as long as the options say, or until the signal is set.
     *
     * @param stop set by whoever does not want to wait any longer
     * @throws Refused when the season cannot be used, or the plan cannot be written or breaks a rule; then nothing is written
     */
    public static Planned plan(PlanningOrder order, StopSignal stop, PlanningListener listener) {
        StageClock clock = new StageClock();
        Reading.Valid read = order.season().read();
        PlanTarget target = PlanTarget.in(
                order.folder().orElseGet(() -> order.season().folder().resolve(FOLDER)),
                IfThere.replaceIf(order.force()),
                order.withPage());
        ProposedPlan proposed = made(read, order.options(), order.withPage(), target.file(), stop, listener, clock);
        target.write(proposed.text(), proposed.page());
        clock.endOf(Stage.WRITING);
        return new Planned(
                proposed.season(),
                proposed.plan(),
                target.file(),
                PlanPage.outcome(order.withPage(), proposed.page()),
                proposed.end(),
                clock.taken());
    }

    /**
     * A plan that is not written until it is taken. Blocks as long as the options say, or until the signal is set.
     *
     * @param folder that it is to come into, where plans are kept
     * @throws Refused when the season cannot be used, no plan could be written there, or the plan breaks a rule
     */
    public static ProposedPlan propose(
            GivenSeason given, Path folder, PlanningOptions options, StopSignal stop, PlanningListener listener) {
        StageClock clock = new StageClock();
        Reading.Valid read = given.read();
        PlanArchive archive = PlanArchive.own(folder);
        archive.refuseObstructed(true);
        return made(read, options, true, archive.newest(), stop, listener, clock);
    }

    private static ProposedPlan made(
            Reading.Valid read,
            PlanningOptions options,
            boolean withPage,
            Path file,
            StopSignal stop,
            PlanningListener listener,
            StageClock clock) {
        Season season = read.season();
        listener.begins(season);
        CompiledSeason compiled = CompiledSeason.of(season);
        clock.endOf(Stage.READING);
        Plan.SeasonSource source = Plan.SeasonSource.of(season, read.file(), read.sha256());
        PlanningRun.Finished finished = new PlanningRun(compiled, options, stop, listener, clock)
                .plan(SeasonPlanner::plan, orders -> PlanRecorder.record(compiled, orders, source));
        Plan plan = finished.plan();
        OwnAudit.pass(season, plan, false);
        clock.endOf(Stage.AUDIT);
        String text = PlanText.of(plan);
        // from the plan as the file has it, so that the page made of the file is the same
        Optional<String> page = withPage
                ? PlanPage.inTime(
                        stop, compiled.fieldCount(), () -> SeasonPage.html(season, GivenPlan.asWritten(file, text)))
                : Optional.empty();
        clock.endOf(Stage.PAGE);
        return new ProposedPlan(season, plan, text, page, List.of(), finished.end(), Optional.empty());
    }
}

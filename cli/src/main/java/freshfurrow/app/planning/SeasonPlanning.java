package freshfurrow.app.planning;

import freshfurrow.app.input.GivenPlan;
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
import freshfurrow.solver.SeasonPlanner;
import freshfurrow.solver.stop.StopSignal;
import java.util.Optional;

/** Plans a season, audits the plan and writes it. */
public final class SeasonPlanning {
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
        Season season = read.season();
        PlanTarget target = PlanTarget.in(
                order.folder().orElseGet(() -> order.season().folder().resolve("plan")),
                IfThere.replaceIf(order.force()),
                order.withPage());
        listener.begins(season);
        CompiledSeason compiled = CompiledSeason.of(season);
        clock.endOf(Stage.READING);
        Plan.SeasonSource source = Plan.SeasonSource.of(season, read.file(), read.sha256());
        PlanningRun.Finished finished = new PlanningRun(compiled, order.options(), stop, listener, clock)
                .plan(SeasonPlanner::plan, orders -> PlanRecorder.record(compiled, orders, source));
        Plan plan = finished.plan();
        OwnAudit.pass(season, plan, false);
        clock.endOf(Stage.AUDIT);
        String text = PlanText.of(plan);
        // from the plan as the file has it, so that the page made of the file is the same
        Optional<String> page = order.withPage()
                ? PlanPage.inTime(
                        stop,
                        compiled.fieldCount(),
                        () -> SeasonPage.html(season, GivenPlan.asWritten(target.file(), text)))
                : Optional.empty();
        clock.endOf(Stage.PAGE);
        target.write(text, page);
        clock.endOf(Stage.WRITING);
        return new Planned(
                season, plan, target.file(), PlanPage.outcome(order.withPage(), page), finished.end(), clock.taken());
    }
}

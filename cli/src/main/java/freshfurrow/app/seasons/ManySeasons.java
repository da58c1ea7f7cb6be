package freshfurrow.app.seasons;

import freshfurrow.app.input.GivenPlan;
import freshfurrow.app.input.GivenSeason;
import freshfurrow.app.planning.PlanningListener;
import freshfurrow.app.planning.PlanningOrder;
import freshfurrow.app.planning.SeasonPlanning;
import freshfurrow.app.refusal.Refused;
import freshfurrow.solver.stop.StopSignal;
import java.nio.file.Files;
import java.util.Optional;
import java.util.function.Consumer;

/** Plans seasons one after the other. One that is refused does not keep the others from being planned. */
public final class ManySeasons {
    private ManySeasons() {}

    /**
     * Plans each season into the folder {@code plan} beside its file. Each plan is written when it is made, so that what was done is kept
     * whenever this ends. Blocks until all are done.
     *
     * @param outcomes told of each season when it is done
     * @throws Refused when it cannot be known which seasons are meant
     */
    public static void plan(SeasonsOrder order, Consumer<SeasonOutcome> outcomes) {
        for (GivenSeason season : order.slice().of(SeasonList.of(order.list()).seasons())) {
            outcomes.accept(outcome(season, order));
        }
    }

    private static SeasonOutcome outcome(GivenSeason season, SeasonsOrder order) {
        try {
            GivenPlan plan =
                    new GivenPlan(season.folder().resolve(SeasonPlanning.FOLDER).resolve(GivenPlan.FILE_NAME));
            if (!order.force() && Files.exists(plan.file())) {
                return plan.read().season().sha256().equals(season.read().sha256())
                        ? new SeasonOutcome.Kept(season.path())
                        : new SeasonOutcome.Outdated(season.path(), plan.file());
            }
            PlanningOrder one =
                    new PlanningOrder(season, Optional.empty(), order.options(), order.withPage(), order.force());
            return new SeasonOutcome.Made(
                    season.path(), SeasonPlanning.plan(one, StopSignal.untilTold(), PlanningListener.SILENT));
        } catch (Refused refused) {
            return new SeasonOutcome.NotPlanned(season.path(), refused.refusal());
        }
    }
}

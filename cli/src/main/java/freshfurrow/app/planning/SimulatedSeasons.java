package freshfurrow.app.planning;

import freshfurrow.app.time.Stage;
import freshfurrow.app.time.StageClock;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanChances;
import freshfurrow.solver.stop.StopSignal;
import freshfurrow.solver.threads.Workers;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Says how sure a plan is, by simulated seasons whose times vary as the season says. */
final class SimulatedSeasons {
    /** With so many a chance is known to 2.5 of 100, one standard error, or better. */
    static final int SEASONS = 400;

    private static final int AT_A_TIME = 40;

    private SimulatedSeasons() {}

    /**
     * The plan with its chances; the plan as it is where nothing varies, or when it is told to stop.
     *
     * @param season that the plan is of
     * @param stop once set, no more seasons are simulated than are needed to say anything
     * @param clock told what it takes, where it is done
     */
    static Plan withChances(CompiledSeason season, Plan plan, int threads, StopSignal stop, StageClock clock) {
        if (stop.isTold() || !season.season().timesVary()) {
            return plan;
        }
        PlanChances chances = new PlanChances(season, plan);
        List<PlanChances.Count> counts = new ArrayList<>();
        try (Workers workers = new Workers(threads, "simulated seasons")) {
            int round = AT_A_TIME * threads;
            int done = 0;
            do {
                int from = done;
                int upTo = Math.min(SEASONS, done + round);
                counts.addAll(workers.each(
                        IntStream.rangeClosed(0, (upTo - from - 1) / AT_A_TIME)
                                .boxed()
                                .toList(),
                        part -> chances.count(
                                from + part * AT_A_TIME + 1L, Math.min(AT_A_TIME, upTo - from - part * AT_A_TIME))));
                done = upTo;
            } while (done < SEASONS && !stop.isSet());
        }
        clock.endOf(Stage.CHANCES);
        return plan.withChances(chances.chances(counts));
    }
}

package freshfurrow.solver.search;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.estimate.SeasonEstimate;
import freshfurrow.solver.estimate.Stops;
import freshfurrow.solver.schedule.EstimatedLists;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import freshfurrow.solver.schedule.ListScorer;
import freshfurrow.solver.schedule.Schedule;
import freshfurrow.solver.schedule.Scoring;
import freshfurrow.solver.schedule.ScreenedLists;
import java.util.Optional;

/** Annealing on the timeline, from which an estimate keeps what looks much worse. */
final class ScreenedAnnealing implements Track {
    /**
     * So many times the heat lists may look worse by the estimate and still be played out. Measured on nine invented seasons: of the moves
     * that the timeline found better, 96 of 100 or more looked no worse than by that; in one, where a thousand fields share few hoses
     * and any move changes all queues, half.
     */
    static final int PLAYED_OUT_TO = 3;

    private final CompiledSeason season;
    private final Scoring scoring;
    private final SeasonEstimate estimate;
    private final EnvironmentMode mode;
    private final Annealing annealing;

    ScreenedAnnealing(
            CompiledSeason season,
            Scoring scoring,
            SeasonEstimate estimate,
            EnvironmentMode mode,
            Annealing annealing) {
        this.season = season;
        this.scoring = scoring;
        this.estimate = estimate;
        this.mode = mode;
        this.annealing = annealing;
    }

    @Override
    public Found run(FieldLists start, long seed, HardMediumSoftLongScore heat, SearchLimits limits) {
        Optional<TerminationConfig> end = limits.end(limits.movesLeft(0));
        if (end.isEmpty()) {
            return new Found(start, new ListPlayer(season, scoring).score(start));
        }
        Schedule found = annealing.run(scorer(start, heat.multiply(PLAYED_OUT_TO)), start, seed, heat, end.get());
        return new Found(found.fields(), found.score());
    }

    @Override
    public long movesTried() {
        return annealing.movesTried();
    }

    /** The timeline: without an estimate where that knows nothing of what counts, or where every score is to be checked. */
    private ListScorer scorer(FieldLists from, HardMediumSoftLongScore margin) {
        if (!scoring.equals(Scoring.BY_GOALS) || mode != EnvironmentMode.NO_ASSERT) {
            return new ListPlayer(season, scoring);
        }
        Stops stops = new Stops(season);
        stops.learn(from.orders(season.season()));
        return new ScreenedLists(new ListPlayer(season), new EstimatedLists(season, estimate, stops), margin);
    }
}

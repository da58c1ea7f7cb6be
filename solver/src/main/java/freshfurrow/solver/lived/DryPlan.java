package freshfurrow.solver.lived;

import freshfurrow.model.season.GroundRecord;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.PlanningOptions;
import freshfurrow.solver.ProgressListener;
import freshfurrow.solver.SeasonPlanner;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * A plan made before the season, as if it stayed dry: nobody knows its weather yet.
 *
 * @param season compiled without any rain
 * @param lists ids of fields for each planter, in the season's order of planters
 */
record DryPlan(CompiledSeason season, List<List<String>> lists) {
    static final GroundRecord DRY = new GroundRecord("dry", Map.of(), Map.of());

    /** The same steps and seed give the same plan, whatever the number of threads. */
    static DryPlan of(Season season, long steps, long seed, int threads) {
        CompiledSeason compiled = CompiledSeason.of(season.inSpring(DRY));
        PlanningOptions options = new PlanningOptions(Optional.empty(), OptionalLong.of(steps), seed, threads);
        return new DryPlan(compiled, new SeasonPlanner(compiled, options, ProgressListener.SILENT).plan());
    }
}

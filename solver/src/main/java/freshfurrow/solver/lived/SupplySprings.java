package freshfurrow.solver.lived;

import freshfurrow.model.season.Season;
import freshfurrow.model.supply.SupplyNeeds;
import freshfurrow.model.supply.SureShare;
import java.util.List;

/** Lives springs to see what they use. */
public final class SupplySprings {
    private final SpringSource springs;
    private final int threads;
    private final SpringProgress progress;

    /** On so many threads, 1 or more. */
    public SupplySprings(SpringSource springs, int threads, SpringProgress progress) {
        this.springs = springs;
        this.threads = threads;
        this.progress = progress;
    }

    /**
     * The needs of a season in those springs.
     *
     * @param steps moves tried for the plan
     * @param seed of the plan
     */
    public SupplyNeeds needs(Season season, List<Integer> numbers, long steps, long seed, SureShare sure) {
        SpringUses uses = SpringUses.of(season, springs, numbers, steps, seed, threads, progress);
        return SupplyNeeds.of(season, uses.withCompostFree(), uses.asItIs(), sure);
    }
}

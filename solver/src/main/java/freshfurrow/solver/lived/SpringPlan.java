package freshfurrow.solver.lived;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.GroundRecord;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.construction.FirstLists;
import freshfurrow.solver.construction.FollowedLists;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import freshfurrow.solver.search.Search;
import freshfurrow.solver.search.SearchLimits;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A plan that springs are lived by. It is searched for without the bounds and the progress that a plan to be shown comes with.
 *
 * @param season as it is planned for
 * @param orders in the season's order of planters
 */
record SpringPlan(CompiledSeason season, PlantingOrders orders) {
    static final GroundRecord DRY = new GroundRecord("dry", Map.of(), Map.of());

    private SpringPlan(CompiledSeason season, FieldLists fields) {
        this(season, fields.orders(season.season()));
    }

    /** The season without any rain: so it is planned for, as nobody knows its weather yet. */
    static CompiledSeason dry(Season season) {
        return CompiledSeason.of(season.inSpring(DRY));
    }

    /** A first plan by quick rules. */
    static SpringPlan first(CompiledSeason season) {
        return new SpringPlan(season, FirstLists.best(season));
    }

    /** A plan that goes on with lists that were followed before, or with those of quick rules where they are better. */
    static SpringPlan goingOn(CompiledSeason season, PlantingOrders followed) {
        return new SpringPlan(season, FollowedLists.orBetter(season, followed));
    }

    /**
     * This plan or a better one.
     *
     * @param steps moves tried, 0 or more
     * @param threads 1 or more; the same steps and seed give the same plan on any number
     */
    SpringPlan improved(long steps, long seed, int threads) {
        SearchLimits limits = SearchLimits.moves(steps);
        return new SpringPlan(season, new Search(season, seed, threads).improve(fields(), limits, better -> {}));
    }

    /**
     * This plan followed in another season: each planter keeps the fields that it has and may plant there, in their order; fields that
     * then stand in no list go where they cost least at the end of one.
     */
    SpringPlan in(CompiledSeason other) {
        Map<String, List<String>> byPlanter = new HashMap<>();
        List<Applicator> planters = season.season().applicators();
        for (int p = 0; p < planters.size(); p++) {
            byPlanter.put(planters.get(p).id(), orders.byPlanter().get(p));
        }
        List<List<String>> followed = other.season().applicators().stream()
                .map(planter -> byPlanter.getOrDefault(planter.id(), List.of()))
                .toList();
        return new SpringPlan(other, FollowedLists.left(other, orders.with(followed)));
    }

    /** How good it is if the season stays dry. */
    HardMediumSoftLongScore score() {
        return new ListPlayer(season).score(fields());
    }

    private FieldLists fields() {
        return FieldLists.of(season.season(), orders);
    }
}

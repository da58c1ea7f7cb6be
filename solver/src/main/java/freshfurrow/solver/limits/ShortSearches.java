package freshfurrow.solver.limits;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.search.Search;
import freshfurrow.solver.search.SearchLimits;
import freshfurrow.solver.stop.StopSignal;
import freshfurrow.solver.threads.Workers;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;

/** Searches of a number of moves, each in a season of its own from the same lists, on some threads. */
final class ShortSearches {
    private final long seed;
    private final int threads;
    private final StopSignal stop;

    /** @param stop once set, nothing is found; where that is by the clock, each search has about the same time at the most */
    ShortSearches(long seed, int threads, StopSignal stop) {
        this.seed = seed;
        this.threads = threads;
        this.stop = stop;
    }

    /**
     * The best that each search came by, in the order of the seasons; empty when the signal was set before all had begun.
     *
     * @param seasons each is made on the thread of its search
     */
    Optional<List<Plan>> from(PlantingOrders orders, List<Supplier<CompiledSeason>> seasons, long moves) {
        AtomicInteger notBegun = new AtomicInteger(seasons.size());
        try (Workers workers = new Workers(threads, "short search")) {
            List<Plan> found =
                    workers.each(seasons, season -> search(orders, season, moves, notBegun.getAndDecrement())).stream()
                            .flatMap(Optional::stream)
                            .toList();
            return stop.isTold() || found.size() < seasons.size() ? Optional.empty() : Optional.of(found);
        }
    }

    private Optional<Plan> search(PlantingOrders orders, Supplier<CompiledSeason> made, long moves, int notBegun) {
        if (stop.isSet()) {
            return Optional.empty();
        }
        int turns = (notBegun + threads - 1) / threads;
        StopSignal turn = stop.within(1.0 / turns);
        CompiledSeason season = made.get();
        PlantingOrders best =
                moves == 0 ? orders : better(season, orders, new SearchLimits(turn, OptionalLong.of(moves)));
        return Optional.of(PlanRecorder.record(season, best, Plan.SeasonSource.of(season.season(), "", "")));
    }

    private PlantingOrders better(CompiledSeason season, PlantingOrders orders, SearchLimits limits) {
        return new Search(season, seed, 1)
                .improve(FieldLists.of(season.season(), orders), limits, better -> {})
                .orders(season.season());
    }
}

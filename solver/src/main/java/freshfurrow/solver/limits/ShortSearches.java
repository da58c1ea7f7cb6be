package freshfurrow.solver.limits;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.search.Search;
import freshfurrow.solver.search.SearchLimits;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Queue;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Supplier;

/** Searches of a number of moves, each in a season of its own from the same lists, on some threads. */
final class ShortSearches {
    private final long seed;
    private final int threads;
    private final Queue<Search> begun = new ConcurrentLinkedQueue<>();
    private volatile boolean stopped;

    ShortSearches(long seed, int threads) {
        this.seed = seed;
        this.threads = threads;
    }

    /**
     * The best that each search came by, in the order of the seasons; empty when {@link #stop} came first.
     *
     * @param seasons each is made on the thread of its search
     */
    Optional<List<Plan>> from(List<List<String>> lists, List<Supplier<CompiledSeason>> seasons, long moves) {
        ExecutorService workers = Executors.newFixedThreadPool(threads, ShortSearches::daemon);
        try {
            List<Callable<Optional<Plan>>> tasks = new ArrayList<>();
            seasons.forEach(season -> tasks.add(() -> search(lists, season, moves)));
            List<Plan> found = new ArrayList<>();
            for (Future<Optional<Plan>> plan : workers.invokeAll(tasks)) {
                plan.get().ifPresent(found::add);
            }
            return stopped ? Optional.empty() : Optional.of(found);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        } catch (ExecutionException e) {
            throw new IllegalStateException("a short search failed: " + e.getCause(), e.getCause());
        } finally {
            workers.shutdownNow();
        }
    }

    void stop() {
        stopped = true;
        begun.forEach(Search::stop);
    }

    private Optional<Plan> search(List<List<String>> lists, Supplier<CompiledSeason> made, long moves) {
        if (stopped) {
            return Optional.empty();
        }
        CompiledSeason season = made.get();
        List<List<String>> best = moves == 0 ? lists : better(season, lists, moves);
        return Optional.of(PlanRecorder.record(season, best, Plan.SeasonSource.of(season.season(), "", "")));
    }

    private List<List<String>> better(CompiledSeason season, List<List<String>> lists, long moves) {
        Search search = new Search(season, seed, 1);
        begun.add(search);
        if (stopped) {
            search.stop();
        }
        SearchLimits limits = new SearchLimits(OptionalLong.empty(), OptionalLong.of(moves));
        return search.improve(FieldLists.of(season.season(), lists), limits, better -> {})
                .ids(season.season());
    }

    private static Thread daemon(Runnable task) {
        Thread thread = new Thread(task, "short search");
        thread.setDaemon(true);
        return thread;
    }
}

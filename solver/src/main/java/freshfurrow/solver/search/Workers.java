package freshfurrow.solver.search;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Threads for tasks whose results are wanted in the order of the tasks, whichever ends first. */
final class Workers implements AutoCloseable {
    private final ExecutorService threads;

    Workers(int count) {
        threads = Executors.newFixedThreadPool(count, task -> {
            Thread thread = new Thread(task, "search");
            thread.setDaemon(true);
            return thread;
        });
    }

    /** Blocks until all have ended. What one of them throws is thrown on. */
    <T> List<T> run(List<Callable<T>> tasks) {
        List<Future<T>> running = new ArrayList<>();
        tasks.forEach(task -> running.add(threads.submit(task)));
        List<T> results = new ArrayList<>();
        for (Future<T> result : running) {
            results.add(get(result));
        }
        return results;
    }

    private static <T> T get(Future<T> result) {
        try {
            return result.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while searching", e);
        } catch (ExecutionException e) {
            throw new IllegalStateException("a search failed: " + e.getCause(), e.getCause());
        }
    }

    @Override
    public void close() {
        threads.shutdownNow();
    }
}

package freshfurrow.solver.threads;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;
import java.util.function.Supplier;

/** Threads for tasks whose results are wanted in the order of the tasks, whichever ends first. */
public final class Workers implements AutoCloseable {
    private final String name;
    private final ExecutorService threads;

    /**
     * Threads that do not keep the program alive.
     *
     * @param count 1 or more
     * @param name of each of them, and of what they do
     */
    public Workers(int count, String name) {
        this.name = name;
        threads = Executors.newFixedThreadPool(count, task -> daemon(task, name));
    }

    /**
     * The task done for each of the things, the results in their order. Blocks until all have ended.
     *
     * @throws IllegalStateException when a task fails, with what it threw as the cause
     */
    public <S, T> List<T> each(List<S> things, Function<S, T> task) {
        List<Future<T>> running = new ArrayList<>();
        for (S thing : things) {
            running.add(threads.submit(() -> task.apply(thing)));
        }
        List<T> results = new ArrayList<>();
        for (Future<T> result : running) {
            results.add(get(result));
        }
        return results;
    }

    /** Completes a result on a thread of its own, which does not keep the program alive, beside whatever else is done. */
    public static <T> void beside(String name, CompletableFuture<T> result, Supplier<T> work) {
        daemon(() -> result.completeAsync(work, Runnable::run), name).start();
    }

    private static Thread daemon(Runnable task, String name) {
        Thread thread = new Thread(task, name);
        thread.setDaemon(true);
        return thread;
    }

    private <T> T get(Future<T> result) {
        try {
            return result.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted: " + name, e);
        } catch (ExecutionException e) {
            throw new IllegalStateException(name + " failed: " + e.getCause(), e.getCause());
        }
    }

    @Override
    public void close() {
        threads.shutdownNow();
    }
}

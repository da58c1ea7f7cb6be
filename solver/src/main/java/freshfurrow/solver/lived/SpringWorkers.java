package freshfurrow.solver.lived;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;

/** Threads that live springs; results come in the order of the springs, whichever is lived first. */
final class SpringWorkers implements AutoCloseable {
    private final ExecutorService threads;
    private final SpringProgress progress;
    private final int all;
    private final AtomicInteger lived = new AtomicInteger();

    /** So many threads for so many tasks in all. */
    SpringWorkers(int count, int all, SpringProgress progress) {
        this.all = all;
        this.progress = progress;
        threads = Executors.newFixedThreadPool(count, task -> {
            Thread thread = new Thread(task, "spring");
            thread.setDaemon(true);
            return thread;
        });
    }

    /** The task done for each of the things; blocks until all are done. What a task throws is thrown on. */
    <S, T> List<T> each(List<S> things, Function<S, T> task) {
        List<Future<T>> running = new ArrayList<>();
        for (S thing : things) {
            Callable<T> work = () -> {
                T done = task.apply(thing);
                progress.lived(lived.incrementAndGet(), all);
                return done;
            };
            running.add(threads.submit(work));
        }
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
            throw new IllegalStateException("interrupted while living springs", e);
        } catch (ExecutionException e) {
            throw new IllegalStateException("a spring failed: " + e.getCause(), e.getCause());
        }
    }

    @Override
    public void close() {
        threads.shutdownNow();
    }
}

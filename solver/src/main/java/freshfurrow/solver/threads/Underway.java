package freshfurrow.solver.threads;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;

/**
 * One piece of work that is done on a thread of its own, beside whatever else is done.
 *
 * @param <T> what it comes to
 */
public final class Underway<T> {
    private final CompletableFuture<T> result = new CompletableFuture<>();

    private Underway() {}

    /**
     * Begins the work. It does not keep the program alive.
     *
     * @param name of its thread
     */
    public static <T> Underway<T> begin(String name, Supplier<T> work) {
        Underway<T> underway = new Underway<>();
        Workers.beside(name, underway.result, work);
        return underway;
    }

    /** What the work comes to. Blocks until it has ended, and throws what it threw. */
    public T result() {
        return result(result);
    }

    /** What a task comes to. Blocks until it has ended, and throws what it threw. */
    public static <T> T result(CompletableFuture<T> task) {
        try {
            return task.join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw e.getCause() instanceof RuntimeException own ? own : e;
        }
    }
}

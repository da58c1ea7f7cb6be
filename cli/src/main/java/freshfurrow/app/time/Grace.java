package freshfurrow.app.time;

import freshfurrow.solver.stop.StopSignal;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;

/** Time that work may still take once a signal is set. */
public final class Grace {
    private Grace() {}

    /** What the work comes to; empty when it takes longer than so much from when the signal is set. */
    public static <T> Optional<T> inTime(StopSignal stop, long graceMs, Supplier<Optional<T>> work) {
        CompletableFuture<Optional<T>> result = new CompletableFuture<>();
        Thread thread = new Thread(() -> result.completeAsync(work, Runnable::run), "finishing");
        thread.setDaemon(true);
        thread.start();
        CompletableFuture<Optional<T>> graceOver = new CompletableFuture<>();
        StopSignal.Listening told =
                stop.whenTold(() -> graceOver.completeOnTimeout(Optional.empty(), graceMs, TimeUnit.MILLISECONDS));
        stop.left()
                .ifPresent(left -> result.completeOnTimeout(
                        Optional.empty(), Math.max(0, left.toMillis()) + graceMs, TimeUnit.MILLISECONDS));
        try {
            return result.applyToEither(graceOver, first -> first).join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw e.getCause() instanceof RuntimeException own ? own : e;
        } finally {
            told.close();
        }
    }
}

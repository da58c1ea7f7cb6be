package freshfurrow.app.time;

import freshfurrow.solver.stop.StopSignal;
import freshfurrow.solver.threads.Underway;
import freshfurrow.solver.threads.Workers;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;

/** Time that work may still take once a signal is set. */
public final class Grace {
    private Grace() {}

    /** What the work comes to; empty when it takes longer than so much from when the signal is set. */
    public static <T> Optional<T> inTime(StopSignal stop, long graceMs, Supplier<Optional<T>> work) {
        CompletableFuture<Optional<T>> result = new CompletableFuture<>();
        Workers.beside("finishing", result, work);
        CompletableFuture<Optional<T>> graceOver = new CompletableFuture<>();
        StopSignal.Listening told =
                stop.whenTold(() -> graceOver.completeOnTimeout(Optional.empty(), graceMs, TimeUnit.MILLISECONDS));
        stop.left()
                .ifPresent(left -> result.completeOnTimeout(
                        Optional.empty(), Math.max(0, left.toMillis()) + graceMs, TimeUnit.MILLISECONDS));
        try {
            return Underway.result(result.applyToEither(graceOver, first -> first));
        } finally {
            told.close();
        }
    }
}

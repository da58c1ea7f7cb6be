package freshfurrow.cli.command;

import freshfurrow.solver.stop.StopSignal;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import java.util.function.ToIntFunction;
import picocli.CommandLine.Model.CommandSpec;

/**
 * Ctrl-C, or whatever else asks the program to end: a command that has something to keep is told to end soon, and the program waits
 * until it has written that, and said so.
 */
public final class Interruption {
    private final CommandSpec spec;
    private final StopSignal stop = StopSignal.untilTold();
    private final CompletableFuture<Void> told = new CompletableFuture<>();
    private final CountDownLatch ended = new CountDownLatch(1);
    private volatile boolean keeping;

    private Interruption(CommandSpec spec) {
        this.spec = spec;
    }

    /**
     * Runs a command until it has ended, also when the program is told to end meanwhile.
     *
     * @return its exit code
     */
    public static int outlivedBy(CommandSpec spec, ToIntFunction<Interruption> command) {
        Interruption interruption = new Interruption(spec);
        Thread onInterrupt = new Thread(interruption::tell, "interruption");
        Runtime.getRuntime().addShutdownHook(onInterrupt);
        try {
            return command.applyAsInt(interruption);
        } catch (Refusal refusal) {
            if (!interruption.stop.isTold()) {
                throw refusal;
            }
            // nobody else would come to say it
            Output.print(spec.commandLine().getErr(), refusal.lines());
            return Freshfurrow.PROBLEM;
        } finally {
            interruption.ended.countDown();
            forget(onInterrupt);
        }
    }

    /** Set when the program is told to end. */
    public StopSignal stop() {
        return stop;
    }

    /** From now on there is something to keep. */
    public void keep() {
        keeping = true;
    }

    /**
     * What the work comes to; empty when it takes longer than so much from when the signal is set.
     *
     * @param by made from {@link #stop}
     */
    public <T> Optional<T> inTime(StopSignal by, long graceMs, Supplier<Optional<T>> work) {
        CompletableFuture<Optional<T>> result = new CompletableFuture<>();
        Thread thread = new Thread(() -> result.completeAsync(work, Runnable::run), "finishing");
        thread.setDaemon(true);
        thread.start();
        CompletableFuture<Optional<T>> graceOver = told.thenCompose(now -> new CompletableFuture<Optional<T>>()
                .completeOnTimeout(Optional.empty(), graceMs, TimeUnit.MILLISECONDS));
        by.left()
                .ifPresent(left -> result.completeOnTimeout(
                        Optional.empty(), Math.max(0, left.toMillis()) + graceMs, TimeUnit.MILLISECONDS));
        try {
            return result.applyToEither(graceOver, first -> first).join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw e.getCause() instanceof RuntimeException own ? own : e;
        }
    }

    private void tell() {
        stop.set();
        told.complete(null);
        if (!keeping) {
            Output.print(
                    spec.commandLine().getErr(),
                    List.of("Stopped before planning began: nothing was planned or written."));
            return;
        }
        awaitUninterruptibly(ended);
    }

    private static void forget(Thread hook) {
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException e) {
            return; // the program is ending: the hook is what lets it
        }
    }

    private static void awaitUninterruptibly(CountDownLatch latch) {
        boolean interrupted = false;
        while (true) {
            try {
                latch.await();
                break;
            } catch (InterruptedException e) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}

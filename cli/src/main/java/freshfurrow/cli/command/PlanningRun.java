package freshfurrow.cli.command;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.PlanningOptions;
import freshfurrow.solver.SeasonPlanner;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.ToIntFunction;

/** Planning that Ctrl-C ends early and does not throw away. */
final class PlanningRun {
    /** Time for bounds that only have to be set beside the plan; who presses Ctrl-C hardly notices. */
    private static final long GRACE_MS = 300;

    private final CompiledSeason season;
    private final SeasonPlanner planner;
    private final ProgressLine progress;
    private final CompletableFuture<Void> interruption = new CompletableFuture<>();
    private final Function<SeasonPlanner, List<List<String>>> search;

    PlanningRun(CompiledSeason season, PlanningOptions options) {
        this(season, options, SeasonPlanner::plan);
    }

    /** @param search asks the planner for lists */
    PlanningRun(CompiledSeason season, PlanningOptions options, Function<SeasonPlanner, List<List<String>>> search) {
        this.season = season;
        this.search = search;
        progress = ProgressLine.onTerminal(season.season().units());
        planner = new SeasonPlanner(season, options, progress);
    }

    /**
     * Plans, and has the plan finished even when the program is told to end meanwhile.
     *
     * @param finish given the lists of fields, writes the plan
     * @return what {@code finish} returns
     */
    int keepBestOnInterrupt(ToIntFunction<List<List<String>>> finish) {
        CountDownLatch finished = new CountDownLatch(1);
        Thread onInterrupt = new Thread(
                () -> {
                    interruption.complete(null);
                    planner.stop();
                    awaitUninterruptibly(finished);
                },
                "keep best plan");
        Runtime.getRuntime().addShutdownHook(onInterrupt);
        try {
            List<List<String>> lists = search.apply(planner);
            progress.clear();
            return finish.applyAsInt(lists);
        } finally {
            finished.countDown();
            forget(onInterrupt);
        }
    }

    /**
     * A plan with its bounds and with what holds the season back, as far as the program was not told to end before.
     *
     * @param stopped says what the plan is without
     */
    record Finished(Plan plan, Optional<String> stopped) {}

    /**
     * The plan finished, or a better plan where every one could be tried.
     *
     * @param record makes a plan of lists of ids
     */
    Finished finished(Plan found, Function<List<List<String>>, Plan> record) {
        Optional<Plan> bounded = bounded(found, record);
        Plan best = bounded.orElse(found);
        Optional<List<Plan.Limit>> limits = limits(best);
        return new Finished(
                limits.map(best::withLimits).orElse(best),
                limits.isPresent()
                        ? Optional.empty()
                        : Optional.of("Stopped before " + (bounded.isEmpty() ? "bounds and " : "")
                                + "what holds the season back " + (bounded.isEmpty() ? "were" : "was")
                                + " worked out: the plan is without."));
    }

    private Optional<Plan> bounded(Plan plan, Function<List<List<String>>, Plan> record) {
        return unlessInterrupted(
                () -> Optional.of(BoundedPlan.of(season, plan, planner.bounds().join(), record, this::interrupted)));
    }

    private Optional<List<Plan.Limit>> limits(Plan plan) {
        return unlessInterrupted(() -> planner.limits(plan));
    }

    /** Whether the program was told to end. */
    private boolean interrupted() {
        return interruption.isDone();
    }

    /** Works on a thread that the end of the program waits for no longer than {@link #GRACE_MS}. */
    private <T> Optional<T> unlessInterrupted(Supplier<Optional<T>> work) {
        CompletableFuture<Optional<T>> result = new CompletableFuture<>();
        Thread thread = new Thread(() -> result.completeAsync(work, Runnable::run), "finishing");
        thread.setDaemon(true);
        thread.start();
        CompletableFuture<Optional<T>> graceOver = interruption.thenCompose(told -> new CompletableFuture<Optional<T>>()
                .completeOnTimeout(Optional.empty(), GRACE_MS, TimeUnit.MILLISECONDS));
        try {
            return result.applyToEither(graceOver, first -> first).join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw e.getCause() instanceof RuntimeException own ? own : e;
        }
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

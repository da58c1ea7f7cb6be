package freshfurrow.cli.command;

import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.PlanningOptions;
import freshfurrow.solver.SeasonPlanner;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.function.Function;
import java.util.function.ToIntFunction;

/** Planning that Ctrl-C ends early and does not throw away. */
final class PlanningRun {
    private final SeasonPlanner planner;
    private final ProgressLine progress;
    private final Function<SeasonPlanner, List<List<String>>> search;
    private volatile boolean interrupted;

    PlanningRun(Season season, PlanningOptions options) {
        this(season, options, SeasonPlanner::plan);
    }

    /** @param search asks the planner for lists */
    PlanningRun(Season season, PlanningOptions options, Function<SeasonPlanner, List<List<String>>> search) {
        this.search = search;
        progress = ProgressLine.onTerminal(season.units());
        planner = new SeasonPlanner(CompiledSeason.of(season), options, progress);
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
                    interrupted = true;
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

    /** Whether the program was told to end. */
    boolean interrupted() {
        return interrupted;
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

package freshfurrow.solver;

import static freshfurrow.model.quantity.Factors.DM2_PER_HA;

import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.Timeline;
import freshfurrow.solver.bounds.SeasonBounds;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import freshfurrow.solver.stop.StopSignal;
import java.time.Duration;
import java.util.OptionalInt;
import java.util.concurrent.CompletableFuture;
import org.jspecify.annotations.Nullable;

/** Plays the best lists out now and then, away from the searching thread, and tells a listener. */
final class ProgressTicker {
    private static final long EVERY_MS = 250;
    private static final long LAST_TICK_MS = 1_000;

    private final ListPlayer player;
    private final StopSignal time;
    private final ProgressListener listener;
    private final CompiledSeason season;
    private final CompletableFuture<SeasonBounds> bounds;
    private final Thread thread = new Thread(this::tickUntilStopped, "planning progress");
    private volatile FieldLists best;
    private FieldLists told;
    private Timeline played;

    /**
     * @param time set when planning ends at the latest
     * @param bounds what no plan can do better, once that is known
     */
    ProgressTicker(
            CompiledSeason season,
            StopSignal time,
            ProgressListener listener,
            FieldLists first,
            CompletableFuture<SeasonBounds> bounds) {
        this.season = season;
        this.bounds = bounds;
        ListPlayer player = new ListPlayer(season);
        this.player = player;
        this.time = time;
        this.listener = listener;
        this.best = first;
        this.told = first;
        this.played = player.play(first);
        thread.setDaemon(true);
    }

    void start() {
        thread.start();
    }

    void better(FieldLists lists) {
        best = lists;
    }

    /** Waits a little for a call of the listener to end. */
    void stop() {
        thread.interrupt();
        try {
            thread.join(LAST_TICK_MS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void tickUntilStopped() {
        try {
            while (true) {
                tick();
                Thread.sleep(EVERY_MS);
            }
        } catch (InterruptedException e) {
            // the end of planning
        }
    }

    private void tick() {
        FieldLists lists = best;
        if (!lists.equals(told)) {
            // large seasons take long to play out, and cores are wanted for the search
            played = player.play(lists);
            told = lists;
        }
        listener.at(new Progress(
                time.left().map(ProgressTicker::atLeastZero),
                played.fills(),
                played.lateDm2Days() / DM2_PER_HA,
                played.unservedDm2() / DM2_PER_HA,
                leastFills()));
    }

    private OptionalInt leastFills() {
        @Nullable SeasonBounds known = season.mayGoWithout() ? null : bounds.getNow(null);
        return known == null ? OptionalInt.empty() : OptionalInt.of(known.leastFills(played.unservedDm2()));
    }

    private static Duration atLeastZero(Duration duration) {
        return duration.isNegative() ? Duration.ZERO : duration;
    }
}

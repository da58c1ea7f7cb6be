package freshfurrow.solver.search;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.solver.schedule.ListPlayer;
import freshfurrow.solver.schedule.Schedule;
import freshfurrow.solver.stop.StopSignal;
import java.time.Duration;

/** Scores of a schedule's lists as they are worked on, by the timeline, as many as a search may ask for. */
final class CountedScores {
    private final ListPlayer player;
    private final Schedule schedule;
    private final long most;
    private final StopSignal stop;
    private final double timeNs;
    private final long startNs = System.nanoTime();
    private long count;

    /** @param limits how many scores of trials, and until when */
    CountedScores(ListPlayer player, Schedule schedule, SearchLimits limits) {
        this.player = player;
        this.schedule = schedule;
        this.most = limits.movesLeft(0);
        this.stop = limits.stop();
        this.timeNs = stop.left().map(Duration::toNanos).orElse(Long.MAX_VALUE);
    }

    /** The score of lists from which the next ones differ by little; not counted. */
    HardMediumSoftLongScore ofBase() {
        HardMediumSoftLongScore score = player.score(schedule);
        player.stepTaken(Long.MAX_VALUE);
        return score;
    }

    /** The score of a trial; of one that is worse than that on the medium level any that is worse. */
    HardMediumSoftLongScore ofTrial(HardMediumSoftLongScore than) {
        count++;
        return player.scoreUnlessWorse(schedule, than);
    }

    /** Counts a trial that needs no score. */
    void skip() {
        count++;
    }

    boolean areUsedUp() {
        return count >= most || stop.isSet();
    }

    /** How much of the search is over, 0 to 1. */
    double done() {
        return Math.min(1, Math.max((double) count / most, (System.nanoTime() - startNs) / timeNs));
    }

    long count() {
        return count;
    }
}

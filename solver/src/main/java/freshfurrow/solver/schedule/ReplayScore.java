package freshfurrow.solver.schedule;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.api.score.calculator.IncrementalScoreCalculator;
import org.jspecify.annotations.Nullable;

/** The same score as {@link TimelineScore}, worked out from where the lists begin to differ from those before. */
public final class ReplayScore implements IncrementalScoreCalculator<Schedule, HardMediumSoftLongScore> {
    private @Nullable Schedule schedule;

    @Override
    public void resetWorkingSolution(Schedule workingSolution) {
        schedule = workingSolution;
    }

    @Override
    public HardMediumSoftLongScore calculateScore() {
        Schedule current = schedule;
        if (current == null) {
            throw new IllegalStateException("no schedule to play out");
        }
        return current.player().scoring().of(current.player().replay(current));
    }

    // the player itself finds what has changed

    @Override
    public void beforeEntityAdded(Object entity) {}

    @Override
    public void afterEntityAdded(Object entity) {}

    @Override
    public void beforeVariableChanged(Object entity, String variableName) {}

    @Override
    public void afterVariableChanged(Object entity, String variableName) {}

    @Override
    public void beforeEntityRemoved(Object entity) {}

    @Override
    public void afterEntityRemoved(Object entity) {}
}

package freshfurrow.solver.schedule;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.api.score.calculator.IncrementalScoreCalculator;
import org.jspecify.annotations.Nullable;

/** The score that the schedule's own {@link ListScorer} gives its lists. */
public final class ListScore implements IncrementalScoreCalculator<Schedule, HardMediumSoftLongScore> {
    private @Nullable Schedule schedule;

    @Override
    public void resetWorkingSolution(Schedule workingSolution) {
        schedule = workingSolution;
        workingSolution.lists().forEach(list -> workingSolution.scorer().listChanged(list.planter()));
    }

    @Override
    public HardMediumSoftLongScore calculateScore() {
        return current().scorer().score(current());
    }

    @Override
    public void afterListVariableChanged(Object entity, String variableName, int fromIndex, int toIndex) {
        current().scorer().listChanged(((PlanterList) entity).planter());
    }

    @Override
    public void beforeVariableChanged(Object entity, String variableName) {}

    @Override
    public void afterVariableChanged(Object entity, String variableName) {}

    @Override
    public void beforeEntityAdded(Object entity) {}

    @Override
    public void afterEntityAdded(Object entity) {}

    @Override
    public void beforeEntityRemoved(Object entity) {}

    @Override
    public void afterEntityRemoved(Object entity) {}

    private Schedule current() {
        Schedule current = schedule;
        if (current == null) {
            throw new IllegalStateException("no schedule to score");
        }
        return current;
    }
}

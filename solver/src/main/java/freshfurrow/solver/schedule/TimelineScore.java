package freshfurrow.solver.schedule;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.api.score.calculator.EasyScoreCalculator;
import org.jspecify.annotations.Nullable;

/** The score of a schedule: its lists played out by the timeline. */
public final class TimelineScore implements EasyScoreCalculator<Schedule, HardMediumSoftLongScore> {
    private @Nullable ListPlayer player;

    @Override
    public HardMediumSoftLongScore calculateScore(Schedule schedule) {
        ListPlayer current = player;
        if (current == null || current.season() != schedule.season()) {
            current = new ListPlayer(schedule.season(), schedule.scorer().scoring());
            player = current;
        }
        return current.scoring().of(current.play(schedule));
    }
}

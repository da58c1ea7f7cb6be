package freshfurrow.solver.schedule;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.model.goals.GoalSet;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.estimate.ListEstimate;
import freshfurrow.solver.estimate.SeasonEstimate;
import freshfurrow.solver.estimate.Stops;
import freshfurrow.solver.estimate.UnknownGoals;
import java.util.Arrays;
import java.util.List;

/** Scores lists by an estimate: hundreds of times as fast as playing them out, and never the last word. */
public final class EstimatedLists implements ListScorer {
    private final CompiledSeason season;
    private final ListEstimate estimate;
    private final GoalSet goals;
    private final double moreMinPerFill;
    private final boolean[] changed;
    private final int[] entries;

    /** By the goals of the season. */
    public EstimatedLists(CompiledSeason season, SeasonEstimate estimate, Stops stops) {
        this(season, estimate, stops, 0);
    }

    /**
     * By the goals of the season, but for fills, which count for more.
     *
     * @param timesMore so many times their weight more, 0 or more
     */
    public EstimatedLists(CompiledSeason season, SeasonEstimate estimate, Stops stops, double timesMore) {
        this.season = season;
        moreMinPerFill = timesMore * season.season().goals().refillMin();
        this.estimate = new ListEstimate(season, estimate, stops);
        this.goals = GoalSet.of(season.season());
        this.changed = new boolean[season.planterCount()];
        this.entries = new int[season.fieldCount()];
        Arrays.fill(changed, true);
    }

    /** The goals that it sees nothing of. */
    UnknownGoals unknownGoals() {
        return new UnknownGoals(goals, season.isShortOfCompost());
    }

    @Override
    public CompiledSeason season() {
        return season;
    }

    @Override
    public Scoring scoring() {
        return Scoring.BY_GOALS;
    }

    @Override
    public HardMediumSoftLongScore score(Schedule schedule) {
        for (int planter = 0; planter < changed.length; planter++) {
            if (changed[planter]) {
                changed[planter] = false;
                List<Visit> visits = schedule.lists().get(planter).visits();
                int size = visits.size();
                for (int i = 0; i < size; i++) {
                    entries[i] = visits.get(i).entry();
                }
                estimate.tryList(planter, entries, size);
            }
        }
        return score();
    }

    @Override
    public HardMediumSoftLongScore score(FieldLists lists) {
        for (int planter = 0; planter < changed.length; planter++) {
            changed[planter] = true;
            List<Integer> list = lists.of(planter);
            for (int i = 0; i < list.size(); i++) {
                entries[i] = lists.entry(season, list.get(i));
            }
            estimate.tryList(planter, entries, list.size());
        }
        return score();
    }

    private HardMediumSoftLongScore score() {
        long soft = goals.soft(estimate) - Math.round(moreMinPerFill * estimate.fills());
        return HardMediumSoftLongScore.of(goals.hard(estimate), goals.medium(estimate), soft);
    }

    @Override
    public void listChanged(int planter) {
        changed[planter] = true;
    }

    @Override
    public void stepTaken(long mediumWorse) {
        estimate.keep();
    }
}

package freshfurrow.solver.schedule;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.model.timeline.CompiledSeason;

/** What gives the search the score of lists that differ by little from those of its last step. Not for use by several threads. */
public interface ListScorer {
    CompiledSeason season();

    /** What lists are worth that are played out. */
    Scoring scoring();

    /** The score of a schedule's lists as they are. */
    HardMediumSoftLongScore score(Schedule schedule);

    /** The score of any lists. */
    HardMediumSoftLongScore score(FieldLists fields);

    /** A planter's list is not what it was when last scored. */
    void listChanged(int planter);

    /**
     * The lists scored last are those of a step, from which the next moves go out.
     *
     * @param mediumWorse lists that are worse than these by more than that on the medium level need no exact score: any that is worse
     *     by as much will do
     */
    void stepTaken(long mediumWorse);
}

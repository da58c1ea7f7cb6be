package freshfurrow.solver.search;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.solver.schedule.FieldLists;

/** Lists that a search came by, and what the timeline says of them. */
record Found(FieldLists lists, HardMediumSoftLongScore score) {
    boolean isBetterThan(Found other) {
        return score.compareTo(other.score) > 0;
    }
}

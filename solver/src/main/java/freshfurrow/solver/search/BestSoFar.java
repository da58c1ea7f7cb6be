package freshfurrow.solver.search;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.solver.schedule.FieldLists;
import java.util.function.Consumer;

/** The best lists that any thread has come by so far; tells of each better one. */
final class BestSoFar {
    private final Consumer<FieldLists> onBetter;
    private HardMediumSoftLongScore score;

    BestSoFar(HardMediumSoftLongScore first, Consumer<FieldLists> onBetter) {
        this.score = first;
        this.onBetter = onBetter;
    }

    synchronized void offer(FieldLists lists, HardMediumSoftLongScore scored) {
        if (scored.compareTo(score) > 0) {
            score = scored;
            onBetter.accept(lists);
        }
    }
}

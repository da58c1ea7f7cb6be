package freshfurrow.solver.independent;

import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.Timeline;

/** What the timeline says that lists are worth; counts how often it is asked. */
final class PlainScore {
    private final Timeline timeline;
    private long asked;

    PlainScore(CompiledSeason season) {
        timeline = new Timeline(season);
    }

    /**
     * What lists are worth.
     *
     * @param least of what is worth less the worth need not be exact, but is less than that, too
     */
    Worth of(PlainLists lists, Worth least) {
        asked++;
        timeline.rerun(lists.entries(), lists.sizes(), least.hard() == 0 ? least.medium() : Long.MIN_VALUE);
        return new Worth(timeline.hard(), timeline.medium(), timeline.soft());
    }

    /** What lists are worth from which the next ones differ by little. */
    Worth ofBase(PlainLists lists) {
        Worth worth = of(lists, Worth.LEAST);
        timeline.adopt();
        return worth;
    }

    long asked() {
        return asked;
    }
}

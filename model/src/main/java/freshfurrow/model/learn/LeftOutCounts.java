package freshfurrow.model.learn;

import java.util.EnumMap;
import java.util.Map;

/** Counts what is left out. */
final class LeftOutCounts {
    private final Map<LeftOut, Integer> counts = new EnumMap<>(LeftOut.class);

    void count(LeftOut why) {
        count(why, 1);
    }

    void count(LeftOut why, int entries) {
        if (entries > 0) {
            counts.merge(why, entries, Integer::sum);
        }
    }

    Map<LeftOut, Integer> all() {
        return counts;
    }
}

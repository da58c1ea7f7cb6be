package freshfurrow.model.timeline.journal;

import freshfurrow.model.timeline.state.WithoutReason;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What is planted without extract, put together by field and reason. */
final class WithoutParts {
    private final List<Without> all = new ArrayList<>();

    /** By planter, what it plants now; of no area where it has not begun. */
    private final Map<Integer, Without> current = new HashMap<>();

    void goes(int planter, WithoutReason why, int untilS, int rig, int waitS) {
        keep(current.put(planter, new Without(planter, -1, why, 0, 0, 0, untilS, rig, waitS)));
    }

    void planted(int planter, int field, int start, int end, long dm2) {
        current.compute(planter, (p, now) -> {
            if (now == null) {
                throw new IllegalStateException("planter " + planter + " goes without extract for no reason");
            }
            return now.with(field, start, end, dm2);
        });
    }

    /** In the order in which they begin. */
    List<Without> all() {
        List<Without> found = new ArrayList<>(all);
        current.values().stream().filter(part -> part.dm2() > 0).forEach(found::add);
        found.sort(Comparator.comparingInt(Without::startS).thenComparingInt(Without::planter));
        return found;
    }

    private void keep(@Nullable Without before) {
        if (before != null && before.dm2() > 0) {
            all.add(before);
        }
    }
}

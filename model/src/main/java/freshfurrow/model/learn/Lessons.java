package freshfurrow.model.learn;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What a log teaches.
 *
 * @param lessons for each figure that a log of the season can teach, in the order of the season
 * @param leftOut how many entries teach nothing, and why; reasons without entries are left out
 * @param dryingLearned whether ground after rain was looked at; not where a weather record closes fields
 */
public record Lessons(List<Lesson> lessons, Map<LeftOut, Integer> leftOut, boolean dryingLearned) {
    public Lessons {
        lessons = List.copyOf(lessons);
        EnumMap<LeftOut, Integer> counts = new EnumMap<>(LeftOut.class);
        counts.putAll(leftOut);
        leftOut = Collections.unmodifiableMap(counts);
    }

    /** Those whose figure in the season file differs from what the log says by more than chance. */
    public List<Lesson> differing() {
        return lessons.stream().filter(Lesson::differs).toList();
    }
}

package freshfurrow.model.edit;

import java.util.Comparator;
import java.util.List;

/**
 * Characters of a text replaced by others.
 *
 * @param start of the first that goes
 * @param end behind the last that goes; the same as {@code start} where none goes
 */
record Change(int start, int end, String replacement) {
    private static final Comparator<Change> BY_PLACE =
            Comparator.comparingInt(Change::start).thenComparingInt(Change::end);

    static Change insert(int at, String addition) {
        return new Change(at, at, addition);
    }

    static Change delete(int start, int end) {
        return new Change(start, end, "");
    }

    /** @param changes none of which overlaps another; what is inserted at one place comes in their order, before what goes there */
    static String applied(String text, List<Change> changes) {
        StringBuilder changed = new StringBuilder();
        int copied = 0;
        for (Change change : changes.stream().sorted(BY_PLACE).toList()) {
            changed.append(text, copied, change.start()).append(change.replacement());
            copied = change.end();
        }
        return changed.append(text, copied, text.length()).toString();
    }
}

package freshfurrow.app.editing;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/** What was done and what was undone, each with the latest first; the oldest is forgotten. */
final class EditHistory {
    private static final int MOST_STEPS = 200;
    private static final long MOST_CHARACTERS = 64L << 20;

    private final Deque<EditStep> done = new ArrayDeque<>();
    private final Deque<EditStep> undone = new ArrayDeque<>();

    /** What was undone before can no longer be redone. */
    void did(EditStep step) {
        undone.clear();
        push(done, step);
    }

    Optional<EditStep> lastDone() {
        return Optional.ofNullable(done.peekFirst());
    }

    Optional<EditStep> lastUndone() {
        return Optional.ofNullable(undone.peekFirst());
    }

    void undid() {
        push(undone, done.removeFirst());
    }

    void redid() {
        push(done, undone.removeFirst());
    }

    private static void push(Deque<EditStep> steps, EditStep step) {
        steps.addFirst(step);
        while (steps.size() > 1
                && (steps.size() > MOST_STEPS
                        || steps.stream().mapToLong(EditStep::characters).sum() > MOST_CHARACTERS)) {
            steps.removeLast();
        }
    }
}

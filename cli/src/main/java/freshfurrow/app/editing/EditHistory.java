package freshfurrow.app.editing;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/** What was done and what was undone, each with the latest first; the oldest is forgotten. */
final class EditHistory {
    private final Deque<EditStep> done = new ArrayDeque<>();
    private final Deque<EditStep> undone = new ArrayDeque<>();

    private final int mostSteps;
    private final long mostCharacters;

    /** @param mostCharacters that the texts of all steps may have together, but for those of the latest */
    EditHistory(int mostSteps, long mostCharacters) {
        this.mostSteps = mostSteps;
        this.mostCharacters = mostCharacters;
    }

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

    private void push(Deque<EditStep> steps, EditStep step) {
        steps.addFirst(step);
        while (steps.size() > 1
                && (steps.size() > mostSteps
                        || steps.stream().mapToLong(EditStep::characters).sum() > mostCharacters)) {
            steps.removeLast();
        }
    }
}

package freshfurrow.app.refusal;

import freshfurrow.model.files.Obstacle;
import java.nio.file.Path;
import java.util.List;

/** Files are not written; those that were there are as before. */
public sealed interface OutputRefusal extends Refusal {
    <T> T accept(Visitor<T> visitor);

    @Override
    default <T> T accept(Refusal.Visitor<T> visitor) {
        return visitor.visit(this);
    }

    /**
     * What a door makes of each of these refusals.
     *
     * @param <T> what is made of it
     */
    interface Visitor<T> {
        T visit(Obstructed refusal);

        T visit(Unwritable refusal);

        T visit(PlanTooLarge refusal);

        T visit(NoCalendar refusal);

        T visit(UnreadableCalendar refusal);
    }

    /** What is not done, and so is as it was. */
    enum Unwritten {
        /** Files that are made of what is there. */
        FILES,
        /** A season that was to be begun. */
        SEASON,
        /** A plan that was not begun. */
        PLANNING,
        /** A plan that was made. */
        PLAN,
        /** A plan that was made in place of another. */
        REPLAN
    }

    /** What is in the way of a file. */
    record Obstruction(Path file, Obstacle obstacle) {}

    /**
     * Something is in the way of files.
     *
     * @param obstructions one at least
     */
    record Obstructed(List<Obstruction> obstructions, Unwritten unwritten) implements OutputRefusal {
        public Obstructed {
            obstructions = List.copyOf(obstructions);
        }

        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /** A file, or a file in a folder, cannot be written. */
    record Unwritable(Path path, String reason, Unwritten unwritten) implements OutputRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /**
     * The plan would make a file that could not be read again.
     *
     * @param megabytes of the plan, rounded down
     */
    record PlanTooLarge(int megabytes) implements OutputRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /** What is to be replaced by a calendar is no calendar of a plan. */
    record NoCalendar(Path file) implements OutputRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /** The calendar that is to be carried on cannot be read. */
    record UnreadableCalendar(Path file, String reason) implements OutputRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }
}

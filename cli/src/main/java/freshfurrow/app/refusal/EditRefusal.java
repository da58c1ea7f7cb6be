package freshfurrow.app.refusal;

import freshfurrow.model.files.Obstacle;
import freshfurrow.model.read.Problem;
import java.nio.file.Path;

/** A season's files are not changed. */
public sealed interface EditRefusal extends Refusal {
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
        T visit(NotByPosition refusal);

        T visit(NothingToUndo refusal);

        T visit(NothingToRedo refusal);

        T visit(ObstructedSeason refusal);

        T visit(UnwritableSeason refusal);
    }

    /**
     * The edit has no place in the text, or cannot be made without changing what is not meant.
     *
     * @param problem file, place, reason and remedy
     */
    record NotByPosition(Problem problem) implements EditRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /** Nothing was edited, or all of it is undone. */
    record NothingToUndo() implements EditRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /** Nothing was undone since the last edit. */
    record NothingToRedo() implements EditRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /** A file of the season is none that is written. */
    record ObstructedSeason(Path file, Obstacle obstacle) implements EditRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /** The files of the season cannot be written. */
    record UnwritableSeason(Path season, String reason) implements EditRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }
}

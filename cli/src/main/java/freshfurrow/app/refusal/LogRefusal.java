package freshfurrow.app.refusal;

import freshfurrow.model.files.Obstacle;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;

/** Nothing is added to a log, or made of it. */
public sealed interface LogRefusal extends Refusal {
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
        T visit(NoTimeOfEntry refusal);

        T visit(UnknownException refusal);

        T visit(NotYet refusal);

        T visit(ObstructedLog refusal);

        T visit(UnwritableLog refusal);

        T visit(NothingLearned refusal);
    }

    /**
     * It is not said when it was, and today is no day of the season.
     *
     * @param first day of the season
     * @param last day of the season
     */
    record NoTimeOfEntry(LocalDate first, LocalDate last) implements LogRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /**
     * What is to be left out is no field and no machine of the season.
     *
     * @param known ids of those that it has
     */
    record UnknownException(String id, List<String> known) implements LogRefusal {
        public UnknownException {
            known = List.copyOf(known);
        }

        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /** What is to be done by then may still be done otherwise. */
    record NotYet(LocalDateTime until, LocalDateTime now) implements LogRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /** Something that is no log is in its place. */
    record ObstructedLog(Path log, Obstacle obstacle) implements LogRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /** The log cannot be written. */
    record UnwritableLog(Path log, String reason) implements LogRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /**
     * Nothing in the log differs from what the season file says by more than chance.
     *
     * @param file that was to be made of it
     */
    record NothingLearned(Path file) implements LogRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }
}

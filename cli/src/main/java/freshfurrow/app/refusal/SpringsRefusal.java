package freshfurrow.app.refusal;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

/** A season cannot be lived through such springs, or slices of them not be joined. */
public sealed interface SpringsRefusal extends Refusal {
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
        T visit(NoRecord refusal);

        T visit(NoWholeSpring refusal);

        T visit(TooFewSprings refusal);

        T visit(NoSuchYears refusal);

        T visit(OtherDates refusal);

        T visit(TimesDoNotVary refusal);

        T visit(NoComparison refusal);

        T visit(MisfitSlice refusal);
    }

    /**
     * The season names no weather record to make springs from.
     *
     * @param season name of its file
     */
    record NoRecord(String season) implements SpringsRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /**
     * No year of the weather record has all days of the season.
     *
     * @param record name of its file
     * @param first day of the season
     * @param last day of the season
     */
    record NoWholeSpring(String record, LocalDate first, LocalDate last) implements SpringsRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /**
     * The weather record is too short to make more springs from than it has.
     *
     * @param record name of its file
     * @param there how many it has
     */
    record TooFewSprings(String record, int there) implements SpringsRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /**
     * The weather record has the season's days of other years only.
     *
     * @param record name of its file
     * @param there those years
     */
    record NoSuchYears(String record, List<Integer> there) implements SpringsRefusal {
        public NoSuchYears {
            there = List.copyOf(there);
        }

        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /**
     * A variant has other first and last days than the season.
     *
     * @param variant its name
     */
    record OtherDates(String variant) implements SpringsRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /** A file is no comparison that can be read. */
    record NoComparison(Path file, String reason) implements SpringsRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /** A slice does not go with those before it. */
    record MisfitSlice(Path file, String reason) implements SpringsRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /**
     * Reserves are to be tried, and neither the season nor a variant says that times vary.
     *
     * @param season name of its file
     */
    record TimesDoNotVary(String season) implements SpringsRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }
}

package freshfurrow.app.refusal;

import freshfurrow.model.plan.Plan;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

/** A plan does not answer what it is asked. */
public sealed interface PlanRefusal extends Refusal {
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
        T visit(NoWork refusal);

        T visit(NoWorkOn refusal);

        T visit(NoMoreWork refusal);

        T visit(NoField refusal);

        T visit(PlantedBefore refusal);

        T visit(Unplayable refusal);

        T visit(NotForMachine refusal);

        T visit(BeforeWindow refusal);

        T visit(ClosedDay refusal);

        T visit(NoCompostYet refusal);

        T visit(BeginsInAnotherSeason refusal);
    }

    /** No machine does anything in it. */
    record NoWork() implements PlanRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /**
     * No machine does anything on that day.
     *
     * @param first day on which one does
     * @param last day on which one does
     */
    record NoWorkOn(LocalDate day, LocalDate first, LocalDate last) implements PlanRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /**
     * No machine does anything from today on.
     *
     * @param first day on which one did
     * @param last day on which one did
     */
    record NoMoreWork(LocalDate today, LocalDate first, LocalDate last) implements PlanRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /**
     * The season has no such field.
     *
     * @param known ids of its fields
     */
    record NoField(String field, List<String> known) implements PlanRefusal {
        public NoField {
            known = List.copyOf(known);
        }

        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /** The field was planted whole before the plan begins. */
    record PlantedBefore(String field) implements PlanRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /**
     * Its lists cannot be played out in its season.
     *
     * @param plan its file
     */
    record Unplayable(Path plan, String reason) implements PlanRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /**
     * It was made from another season, and cannot begin in the one it is held against.
     *
     * @param plan its file
     * @param season name of the season it is held against
     * @param source what it was made from
     */
    record BeginsInAnotherSeason(Path plan, String season, Plan.SeasonSource source) implements PlanRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /** A field cannot be tried with a machine that may not do it, or that there is not. */
    record NotForMachine(String field, String machine) implements PlanRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /**
     * A field cannot be tried on a day before its window.
     *
     * @param first day of its window
     */
    record BeforeWindow(String field, LocalDate day, LocalDate first) implements PlanRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /** Nothing can be tried on a day that is closed or none of the season. */
    record ClosedDay(LocalDate day) implements PlanRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /** Nothing can be tried on a day before there is compost. */
    record NoCompostYet(LocalDate day) implements PlanRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }
}

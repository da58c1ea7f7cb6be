package freshfurrow.app.refusal;

import freshfurrow.model.audit.Finding;
import freshfurrow.model.season.Work;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Set;

/** A season is not planned, or not planned again. */
public sealed interface PlanningRefusal extends Refusal {
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
        T visit(NoTime refusal);

        T visit(OutOfSeason refusal);

        T visit(PlanBeginsLater refusal);

        T visit(UnknownMachine refusal);

        T visit(UnknownLot refusal);

        T visit(BrokenPlan refusal);

        T visit(SeasonChanged refusal);

        T visit(PlanChanged refusal);

        T visit(MisfitChange refusal);
    }

    /**
     * It is not said from when on to plan, and neither the clock nor what is told is in the season.
     *
     * @param first day of the season
     * @param last day of the season
     */
    record NoTime(LocalDate first, LocalDate last) implements PlanningRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /**
     * Nothing can be planned from then on.
     *
     * @param first day of the season
     * @param last day of the season
     */
    record OutOfSeason(LocalDateTime now, LocalDate first, LocalDate last) implements PlanningRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /**
     * The plan that was followed says nothing of the time from which on to plan.
     *
     * @param plan its file
     * @param begins when it begins
     */
    record PlanBeginsLater(Path plan, LocalDateTime begins, LocalDateTime now) implements PlanningRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /**
     * What is said to be down is no machine of the season.
     *
     * @param known ids of its machines
     * @param works what those that are not rigs do
     */
    record UnknownMachine(String id, List<String> known, Set<Work> works) implements PlanningRefusal {
        public UnknownMachine {
            works = Set.copyOf(works);
            known = List.copyOf(known);
        }

        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /**
     * What is said to be spoiled is no lot of the season.
     *
     * @param known ids of its lots
     */
    record UnknownLot(String id, List<String> known) implements PlanningRefusal {
        public UnknownLot {
            known = List.copyOf(known);
        }

        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /**
     * The plan that was made breaks rules of its own season, and is not written: an error of the program.
     *
     * @param findings one at least
     * @param again whether a plan was followed
     */
    record BrokenPlan(List<Finding> findings, boolean again) implements PlanningRefusal {
        public BrokenPlan {
            findings = List.copyOf(findings);
        }

        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /** A plan is not taken, as the season is another than the one it was made for. */
    record SeasonChanged() implements PlanningRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /**
     * A plan is not taken, as the one that it was held against is no longer the newest.
     *
     * @param newest its file
     */
    record PlanChanged(Path newest) implements PlanningRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /**
     * The season's files were changed so that they do not go with what is under way, as mix on board.
     *
     * @param findings what would be broken; one at least
     */
    record MisfitChange(List<Finding> findings) implements PlanningRefusal {
        public MisfitChange {
            findings = List.copyOf(findings);
        }

        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }
}

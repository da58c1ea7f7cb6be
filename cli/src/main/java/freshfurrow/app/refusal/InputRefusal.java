package freshfurrow.app.refusal;

import freshfurrow.model.read.Problem;
import java.nio.file.Path;
import java.util.List;

/** The season, plan or log that is meant cannot be used, or there is none. */
public sealed interface InputRefusal extends Refusal {
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
        T visit(ProblemsFound refusal);

        T visit(UnreadablePlan refusal);

        T visit(NoPlanFile refusal);

        T visit(PlanOfAnotherSeason refusal);

        T visit(SeasonOfAnotherPlan refusal);

        T visit(SeasonNotFound refusal);

        T visit(ImpossibleStart refusal);

        T visit(UnreadablePlans refusal);

        T visit(NoLog refusal);

        T visit(Unknown refusal);

        T visit(Undecided refusal);
    }

    /** All that is wrong with a season or a log, one problem at least. */
    record ProblemsFound(List<Problem> problems) implements InputRefusal {
        public ProblemsFound {
            problems = List.copyOf(problems);
        }

        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /**
     * A file that is no plan in whole, or does not go with its season.
     *
     * @param problem file, place, reason and remedy in one line
     */
    record UnreadablePlan(String problem) implements InputRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /** A path at which no plan can be. */
    record NoPlanFile(Path file) implements InputRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /**
     * A plan that was not made from the season as it is now, with its variants.
     *
     * @param plan the file of the plan
     * @param season name of the season file
     */
    record PlanOfAnotherSeason(Path plan, String season) implements InputRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /**
     * A season that a plan was not made from, as it is now and with the variants that were named.
     *
     * @param season the file or folder of the season
     * @param plan the file of the plan
     */
    record SeasonOfAnotherPlan(Path season, Path plan) implements InputRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /**
     * The season of a plan is not where seasons of plans are.
     *
     * @param plan the file of the plan
     * @param places where it was looked for
     */
    record SeasonNotFound(Path plan, List<Path> places) implements InputRefusal {
        public SeasonNotFound {
            places = List.copyOf(places);
        }

        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /**
     * A plan begins otherwise than its season can stand.
     *
     * @param plan the file of the plan
     */
    record ImpossibleStart(Path plan, String reason) implements InputRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /** The folder of the plans that were kept cannot be read. */
    record UnreadablePlans(Path folder, String reason) implements InputRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /** The log that is named is not there. */
    record NoLog(Path log) implements InputRefusal {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /**
     * The season has no such part.
     *
     * @param known ids of those that it has
     */
    record Unknown(SeasonPart part, String id, List<String> known) implements InputRefusal {
        public Unknown {
            known = List.copyOf(known);
        }

        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }

    /**
     * The season has several of them, or none, and none was named.
     *
     * @param known ids of those that it has
     */
    record Undecided(SeasonPart part, List<String> known) implements InputRefusal {
        public Undecided {
            known = List.copyOf(known);
        }

        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.visit(this);
        }
    }
}

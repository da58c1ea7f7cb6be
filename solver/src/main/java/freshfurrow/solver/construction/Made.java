package freshfurrow.solver.construction;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.solver.schedule.FieldLists;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Lists for a fleet, and what the timeline says of them.
 *
 * @param isLate whether any field is planted after its window
 */
record Made(FieldLists lists, HardMediumSoftLongScore score, boolean isLate, Fleet fleet) {
    private static final Comparator<Made> BY_SCORE = Comparator.comparing(Made::score);

    static Optional<Made> best(List<Made> several) {
        return several.stream().max(BY_SCORE);
    }

    /**
     * The one with the least effort of those that are about as good as the best on the medium level: a search makes a late field good
     * more easily than it sends a planter home.
     *
     * @param worse on the medium level, and still as good
     */
    static Optional<Made> easiest(List<Made> several, long worse) {
        return best(several).flatMap(best -> several.stream()
                .filter(made -> made.score.hardScore() == best.score.hardScore()
                        && made.score.mediumScore() >= best.score.mediumScore() - worse)
                .max(Comparator.<Made>comparingLong(made -> made.score.softScore())
                        .thenComparing(BY_SCORE)));
    }
}

package freshfurrow.model.learn;

import java.util.Optional;

/**
 * What a log teaches of one figure.
 *
 * @param of id of the machine, or the drainage class or the spread as the season file names it
 * @param fileFigure what the season file says, in the unit of {@link Taught}
 * @param observations how many entries, or fields after rain, tell of it
 * @param groups on how many days of the machine, or after how many rains, they were made
 * @param estimate empty when the groups are too few
 */
public record Lesson(
        Taught figure, String of, double fileFigure, int observations, int groups, Optional<Estimate> estimate) {

    /** Whether the season file's figure lies outside the interval, and so differs by more than chance. */
    public boolean differs() {
        return estimate.filter(made -> fileFigure < made.low() || fileFigure > made.high())
                .isPresent();
    }
}

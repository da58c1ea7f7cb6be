package freshfurrow.cli.card;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a card for a hose is to be made for.
 *
 * @param sprayer id of the sprayer
 * @param recipe index in the season's order
 * @param m2PerS what a person covers with it, as the season says, m2/s, above 0
 * @param catchS how long is caught, s, above 0
 * @param caughtL what was caught in that time, L, above 0
 * @param area what was sprayed against the clock
 */
public record HoseOrder(
        String sprayer, int recipe, double m2PerS, int catchS, OptionalDouble caughtL, Optional<Timed> area) {
    /**
     * An area, and how long it took.
     *
     * @param m2 above 0; likewise {@code s}
     */
    public record Timed(double m2, double s) {
        double m2PerS() {
            return m2 / s;
        }
    }
}

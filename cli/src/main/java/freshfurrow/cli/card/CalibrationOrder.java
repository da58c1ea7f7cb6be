package freshfurrow.cli.card;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a calibration card is to be made for.
 *
 * @param outlets of the machine to calibrate
 * @param recipe index in the season's order
 * @param speedMPerS speed to calibrate for, above 0, m/s
 * @param jarS length of a jar test, above 0, s
 * @param pressureKPa gauge pressure that gives the recipe's rate, or at which was caught, kPa
 * @param otherLPerHa another rate for which the pressure is wanted, L/ha
 * @param caught what was caught
 */
public record CalibrationOrder(
        Outlets outlets,
        int recipe,
        double speedMPerS,
        int jarS,
        OptionalDouble pressureKPa,
        OptionalDouble otherLPerHa,
        Optional<Caught> caught) {

    /**
     * What was caught from outlets, one entry each.
     *
     * @param litres 0 or more, L, one above 0
     * @param distanceM over which distance, m; in the time of the jar test when absent
     */
    public record Caught(List<Double> litres, OptionalDouble distanceM) {
        public Caught {
            litres = List.copyOf(litres);
        }
    }
}

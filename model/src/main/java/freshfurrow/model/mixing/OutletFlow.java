package freshfurrow.model.mixing;

import static freshfurrow.model.quantity.Factors.M2_PER_HA;

/**
 * Rate, speed and flow of one outlet, which serves a strip of one width: flow = rate x speed x width. In US units this is GPM =
 * GPA x MPH x W[in] / 5,940 (county extension pages on sprayer calibration; 5,940 = 43,560 sq ft x 60 min x 12 in / 5,280 ft).
 *
 * @param rateLPerHa L/ha, above 0
 * @param speedMPerS m/s, above 0
 * @param widthM of the strip, m, above 0: the row spacing for a row's outlet, the working width for all rows
 */
public record OutletFlow(double rateLPerHa, double speedMPerS, double widthM) {
    public OutletFlow {
        if (!(rateLPerHa > 0 && speedMPerS > 0 && widthM > 0)) {
            throw new IllegalArgumentException("a flow needs rate, speed and width above 0");
        }
    }

    /** What of that flow, L/s, makes at that speed over that width. */
    public static OutletFlow ofFlow(double litresPerS, double speedMPerS, double widthM) {
        return new OutletFlow(litresPerS * M2_PER_HA / (speedMPerS * widthM), speedMPerS, widthM);
    }

    /**
     * What one outlet let out over a distance makes.
     *
     * @param litres caught, L
     * @param distanceM m
     */
    public static OutletFlow ofCatch(double litres, double distanceM, double speedMPerS, double widthM) {
        return ofFlow(litres * speedMPerS / distanceM, speedMPerS, widthM);
    }

    /** L/s. */
    public double litresPerS() {
        return rateLPerHa * speedMPerS * widthM / M2_PER_HA;
    }

    /** What is caught in so many seconds, L. */
    public double litresIn(double seconds) {
        return litresPerS() * seconds;
    }

    /** What is caught over a distance, L, whatever the speed for which the flow is set. */
    public double litresOver(double distanceM) {
        return litresIn(distanceM / speedMPerS);
    }

    /** The same outlet with the same flow at another speed: less is applied where it goes faster. */
    public OutletFlow atSpeed(double otherMPerS) {
        return ofFlow(litresPerS(), otherMPerS, widthM);
    }

    /** The speed at which this flow gives another rate, m/s. */
    public double speedFor(double otherLPerHa) {
        return speedMPerS * rateLPerHa / otherLPerHa;
    }
}

package freshfurrow.model.mixing;

import static freshfurrow.model.quantity.Factors.M2_PER_HA;

/**
 * Rate, flow and area of a hose in somebody's hand: flow = rate x area per time. On 1/128 of an acre, sprayed in t seconds, what runs
 * out in t seconds is as many fluid ounces as gallons go onto an acre ({@link SmallPlot}).
 */
public final class HoseFlow {
    private HoseFlow() {}

    /**
     * The flow that gives a rate, L/s.
     *
     * @param rateLPerHa L/ha, above 0
     * @param m2PerS what a person covers, m2/s, above 0
     */
    public static double litresPerS(double rateLPerHa, double m2PerS) {
        return rateLPerHa * m2PerS / M2_PER_HA;
    }

    /** The rate that a flow gives where a person covers so much, L/ha. */
    public static double rateLPerHa(double litresPerS, double m2PerS) {
        return litresPerS * M2_PER_HA / m2PerS;
    }

    /** What a person has to cover so that a flow gives a rate, m2/s. */
    public static double m2PerSFor(double litresPerS, double rateLPerHa) {
        return litresPerS * M2_PER_HA / rateLPerHa;
    }
}

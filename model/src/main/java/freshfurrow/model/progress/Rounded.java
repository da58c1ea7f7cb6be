package freshfurrow.model.progress;

/** Figures as a plan file keeps them, so that a plan read back begins where it began. */
final class Rounded {
    private static final double AREAS = 1e6;
    private static final double OTHERS = 1e3;

    /** So that grams stay what they are. */
    private static final double NOISE = 1e-6;

    private Rounded() {}

    /** To square decimetres. */
    static double hectares(double ha) {
        return Math.round(ha * AREAS) / AREAS;
    }

    /** To millilitres. */
    static double litres(double litres) {
        return Math.round(litres * OTHERS) / OTHERS;
    }

    /** To micrometres. */
    static double millimetres(double mm) {
        return Math.round(mm * OTHERS) / OTHERS;
    }

    /** To grams, down: compost that is not there cannot be used. */
    static double kilograms(double kg) {
        return Math.floor(kg * OTHERS + NOISE) / OTHERS;
    }
}

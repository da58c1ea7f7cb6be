package freshfurrow.model.season;

/** How a sprayer covers ground. */
public sealed interface Swath {
    /** Effective field capacity, m2/s, above 0. */
    double fieldCapacityM2PerS();

    /** The same at a speed of so many m/s, above 0. */
    Swath at(double mPerS);

    /**
     * A boom, or a machine that works like one.
     *
     * @param widthM working width, m, above 0
     * @param speedMPerS working speed, m/s, above 0
     * @param fieldEfficiency share of the theoretical capacity reached in the field, above 0 to 1
     */
    record Boom(double widthM, double speedMPerS, double fieldEfficiency) implements Swath {
        public Boom {
            if (!(widthM > 0 && speedMPerS > 0 && fieldEfficiency > 0 && fieldEfficiency <= 1)) {
                throw new IllegalArgumentException("boom has a figure out of range");
            }
        }

        @Override
        public double fieldCapacityM2PerS() {
            return widthM * speedMPerS * fieldEfficiency;
        }

        @Override
        public Boom at(double mPerS) {
            return new Boom(widthM, mPerS, fieldEfficiency);
        }
    }

    /**
     * A hose in somebody's hand.
     *
     * @param rateM2PerS what a person covers with it, m2/s, above 0
     */
    record Hose(double rateM2PerS) implements Swath {
        /** What a hose reaches where only its speed is said, m: none is so narrow. */
        private static final double NARROW_M = 1;

        public Hose {
            if (!(rateM2PerS > 0)) {
                throw new IllegalArgumentException("hose has a figure out of range");
            }
        }

        @Override
        public double fieldCapacityM2PerS() {
            return rateM2PerS;
        }

        @Override
        public Hose at(double mPerS) {
            return new Hose(Math.max(rateM2PerS, NARROW_M * mPerS));
        }
    }
}

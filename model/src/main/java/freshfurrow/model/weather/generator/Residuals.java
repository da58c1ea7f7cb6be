package freshfurrow.model.weather.generator;

import org.apache.commons.rng.sampling.distribution.ContinuousSampler;

/**
 * Residuals of highest and lowest temperature as a lag-one autoregression of two series, x(t) = A x(t - 1) + B e(t), with A = M1 M0^-1 and B B' = M0 - M1
 * M0^-1 M1' from the correlations of the same day M0 and of the day before M1 (Matalas, Water Resources Research 3, 1967, as used in WGEN, USDA
 * ARS-8, 1984). B is lower triangular.
 */
final class Residuals {
    private final double sameDay;
    final double a11;
    final double a12;
    final double a21;
    final double a22;
    final double b11;
    final double b21;
    final double b22;
    private double highest;
    private double lowest;

    Residuals(TemperatureClimate.Persistence persistence) {
        sameDay = persistence.sameDay();
        double m11 = persistence.highestAfterHighest();
        double m12 = persistence.highestAfterLowest();
        double m21 = persistence.lowestAfterHighest();
        double m22 = persistence.lowestAfterLowest();
        double determinant = 1 - sameDay * sameDay;
        a11 = (m11 - sameDay * m12) / determinant;
        a12 = (m12 - sameDay * m11) / determinant;
        a21 = (m21 - sameDay * m22) / determinant;
        a22 = (m22 - sameDay * m21) / determinant;
        double c11 = 1 - (a11 * m11 + a12 * m12);
        double c21 = sameDay - (a21 * m11 + a22 * m12);
        double c22 = 1 - (a21 * m21 + a22 * m22);
        b11 = Math.sqrt(Math.max(0, c11));
        b21 = b11 == 0 ? 0 : c21 / b11;
        b22 = Math.sqrt(Math.max(0, c22 - b21 * b21));
    }

    /** Draws a first day. */
    void begin(ContinuousSampler normal) {
        highest = normal.sample();
        lowest = sameDay * highest + Math.sqrt(1 - sameDay * sameDay) * normal.sample();
    }

    /** Draws the next day. */
    void next(ContinuousSampler normal) {
        double e1 = normal.sample();
        double e2 = normal.sample();
        double before = highest;
        highest = a11 * before + a12 * lowest + b11 * e1;
        lowest = a21 * before + a22 * lowest + b21 * e1 + b22 * e2;
    }

    double highest() {
        return highest;
    }

    double lowest() {
        return lowest;
    }
}

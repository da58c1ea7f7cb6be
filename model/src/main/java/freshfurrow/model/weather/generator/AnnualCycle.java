package freshfurrow.model.weather.generator;

/**
 * A figure that goes round with the year: the mean and the first harmonic, as WGEN (USDA ARS-8, 1984) takes temperatures.
 *
 * @param mean over the year
 * @param cosine amplitude of the cosine, largest at the new year
 * @param sine amplitude of the sine, largest at the end of March
 */
public record AnnualCycle(double mean, double cosine, double sine) {
    private static final double DAYS_PER_YEAR = 365.25;

    /** The figure on a day of the year, 1 to 366. */
    public double on(int dayOfYear) {
        double angle = angle(dayOfYear);
        return mean + cosine * Math.cos(angle) + sine * Math.sin(angle);
    }

    static double angle(int dayOfYear) {
        return 2 * Math.PI * dayOfYear / DAYS_PER_YEAR;
    }

    /** Gathers figures and finds the cycle of least squares through them. */
    static final class Fit {
        private final double[][] products = new double[3][3];
        private final double[] withFigure = new double[3];
        private int figures;

        void add(int dayOfYear, double figure) {
            double angle = angle(dayOfYear);
            double[] terms = {1, Math.cos(angle), Math.sin(angle)};
            for (int i = 0; i < 3; i++) {
                for (int j = 0; j < 3; j++) {
                    products[i][j] += terms[i] * terms[j];
                }
                withFigure[i] += terms[i] * figure;
            }
            figures++;
        }

        int figures() {
            return figures;
        }

        /** By Cramer's rule; the mean alone where the figures are too few or too close in the year for a cycle. */
        AnnualCycle cycle() {
            double determinant = determinant(products);
            if (determinant < 1e-6 * figures * figures * figures) {
                return new AnnualCycle(figures == 0 ? 0 : withFigure[0] / figures, 0, 0);
            }
            double[] solution = new double[3];
            for (int column = 0; column < 3; column++) {
                double[][] replaced = {products[0].clone(), products[1].clone(), products[2].clone()};
                for (int row = 0; row < 3; row++) {
                    replaced[row][column] = withFigure[row];
                }
                solution[column] = determinant(replaced) / determinant;
            }
            return new AnnualCycle(solution[0], solution[1], solution[2]);
        }

        private static double determinant(double[][] m) {
            return m[0][0] * (m[1][1] * m[2][2] - m[1][2] * m[2][1])
                    - m[0][1] * (m[1][0] * m[2][2] - m[1][2] * m[2][0])
                    + m[0][2] * (m[1][0] * m[2][1] - m[1][1] * m[2][0]);
        }
    }
}

package freshfurrow.model.mixing;

import java.util.List;

/**
 * How even the rows are.
 *
 * @param litres caught in the same time or over the same distance, a row an entry, L, each 0 or more and one above 0
 */
public record RowSpread(List<Double> litres) {
    public RowSpread {
        litres = List.copyOf(litres);
        if (litres.isEmpty() || litres.stream().anyMatch(catchL -> !(catchL >= 0)) || !(mean(litres) > 0)) {
            throw new IllegalArgumentException("catches are 0 or more, and one is above 0");
        }
    }

    /** L. */
    public double meanL() {
        return mean(litres);
    }

    /** Standard deviation of a sample (n - 1), L; 0 for one row. */
    public double standardDeviationL() {
        double mean = meanL();
        double squares = litres.stream()
                .mapToDouble(catchL -> (catchL - mean) * (catchL - mean))
                .sum();
        return litres.size() == 1 ? 0 : Math.sqrt(squares / (litres.size() - 1));
    }

    /** Standard deviation over mean, 0 or more. */
    public double coefficientOfVariation() {
        return standardDeviationL() / meanL();
    }

    /** How far a row is off the mean, as a share of it: -1 or more, negative for too little. */
    public double deviation(int row) {
        return litres.get(row) / meanL() - 1;
    }

    private static double mean(List<Double> litres) {
        return litres.stream().mapToDouble(Double::doubleValue).average().orElse(0);
    }
}

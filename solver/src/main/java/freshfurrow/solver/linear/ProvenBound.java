package freshfurrow.solver.linear;

import java.math.BigDecimal;

/**
 * A lower bound on the least cost of a linear program out of weights of its rows, whoever proposed them and however roughly.
 *
 * <p>Proof: let y &gt;= 0 weigh the rows A x &gt;= b. Every x that keeps to the rows has y (A x - b) &gt;= 0, so its cost c x is at least
 * c x - y (A x - b) = y b + (c - y A) x, and that is at least y b plus, over all variables, the least of (c - y A) x between 0
 * and the upper bound. The sum is worked out exactly: a double is a finite decimal fraction, and so are sums and products.
 * Weights from a solver that stopped early or rounded give a weaker bound, never a wrong one (weak duality, see for instance
 * Neumaier and Shcherbina, 'Safe bounds in linear and mixed-integer linear programming', Mathematical Programming 2004).
 */
public final class ProvenBound {
    private ProvenBound() {}

    /** By the weights that a solver library proposes. */
    public static BigDecimal of(LinearProgram program) {
        return of(program, RowWeights.of(program));
    }

    /** @param weights of the rows; those below 0 count as 0 */
    static BigDecimal of(LinearProgram program, double[] weights) {
        BigDecimal bound = BigDecimal.ZERO;
        BigDecimal[] reduced = new BigDecimal[program.variables()];
        for (int j = 0; j < reduced.length; j++) {
            reduced[j] = new BigDecimal(program.cost(j));
        }
        for (int i = 0; i < weights.length; i++) {
            LinearProgram.Row row = program.rows().get(i);
            if (!(weights[i] > 0) || Double.isInfinite(weights[i])) {
                continue;
            }
            BigDecimal weight = new BigDecimal(weights[i]);
            bound = bound.add(weight.multiply(new BigDecimal(row.atLeast())));
            for (LinearProgram.Term term : row.terms()) {
                reduced[term.variable()] =
                        reduced[term.variable()].subtract(weight.multiply(new BigDecimal(term.coefficient())));
            }
        }
        for (int j = 0; j < reduced.length; j++) {
            if (reduced[j].signum() < 0) {
                bound = bound.add(reduced[j].multiply(new BigDecimal(program.upper(j))));
            }
        }
        return bound;
    }
}

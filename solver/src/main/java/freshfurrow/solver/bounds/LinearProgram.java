package freshfurrow.solver.bounds;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Minimise cost x subject to rows of the form sum of coefficient x &gt;= right side, and 0 &lt;= x &lt;= upper. Every variable is
 * bounded, so that any weights of the rows give a bound: see {@link ProvenBound}.
 */
final class LinearProgram {
    private final List<Row> rows = new ArrayList<>();
    private double[] cost = new double[64];
    private double[] upper = new double[64];
    private int variables;

    record Term(int variable, double coefficient) {}

    record Row(List<Term> terms, double atLeast) {}

    /** Adds a variable and returns its index. */
    int variable(double most) {
        if (!(most >= 0) || Double.isInfinite(most)) {
            throw new IllegalArgumentException("a variable goes from 0 to a finite bound, not to " + most);
        }
        if (variables == cost.length) {
            cost = Arrays.copyOf(cost, 2 * variables);
            upper = Arrays.copyOf(upper, 2 * variables);
        }
        upper[variables] = most;
        return variables++;
    }

    void addCost(int variable, double costPerUnit) {
        cost[variable] += costPerUnit;
    }

    void atLeast(Sum sum, double least) {
        add(sum, 1, least);
    }

    void atMost(Sum sum, double most) {
        add(sum, -1, -most);
    }

    /** What an expression comes to at the most, whatever the rows. */
    double largest(Sum sum) {
        double largest = 0;
        for (Map.Entry<Integer, Double> term : sum.coefficients.entrySet()) {
            largest += Math.max(0, term.getValue()) * upper[term.getKey()];
        }
        return largest;
    }

    private void add(Sum sum, int sign, double least) {
        List<Term> terms = new ArrayList<>();
        sum.coefficients.forEach((variable, coefficient) -> terms.add(new Term(variable, sign * coefficient)));
        rows.add(new Row(List.copyOf(terms), least));
    }

    int variables() {
        return variables;
    }

    double cost(int variable) {
        return cost[variable];
    }

    double upper(int variable) {
        return upper[variable];
    }

    List<Row> rows() {
        return rows;
    }

    /** A linear expression. */
    static final class Sum {
        private final Map<Integer, Double> coefficients = new LinkedHashMap<>();

        Sum plus(double coefficient, int variable) {
            coefficients.merge(variable, coefficient, Double::sum);
            return this;
        }
    }
}

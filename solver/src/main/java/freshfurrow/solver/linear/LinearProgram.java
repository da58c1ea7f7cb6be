package freshfurrow.solver.linear;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Minimise cost x subject to rows of the form sum of coefficient x &gt;= right side, and 0 &lt;= x &lt;= upper. Every variable is
 * bounded, so that any weights of the rows give a bound: see {@link ProvenBound}.
 */
public final class LinearProgram {
    private final List<Row> rows = new ArrayList<>();
    private double[] cost = new double[64];
    private double[] upper = new double[64];
    private int variables;

    /** A variable times a coefficient. */
    public record Term(int variable, double coefficient) {}

    /** The terms come to at least so much together. */
    public record Row(List<Term> terms, double atLeast) {}

    /** Adds a variable and returns its index. */
    public int variable(double most) {
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

    /** Adds to what a unit of a variable costs: 0 to begin with. */
    public void addCost(int variable, double costPerUnit) {
        cost[variable] += costPerUnit;
    }

    /** Adds a row. */
    public void atLeast(Sum sum, double least) {
        add(sum, 1, least);
    }

    /** Adds a row, kept with all signs turned. */
    public void atMost(Sum sum, double most) {
        add(sum, -1, -most);
    }

    /** What an expression comes to at the most, whatever the rows. */
    public double largest(Sum sum) {
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

    /** How many there are; their indices go from 0. */
    public int variables() {
        return variables;
    }

    /** Of a unit of a variable. */
    public double cost(int variable) {
        return cost[variable];
    }

    /** The most that a variable may be. */
    public double upper(int variable) {
        return upper[variable];
    }

    /** In the order in which they were added. */
    public List<Row> rows() {
        return rows;
    }

    /** A linear expression. */
    public static final class Sum {
        private final Map<Integer, Double> coefficients = new LinkedHashMap<>();

        /** Adds a term, to the one that the variable has already if there is one. */
        public Sum plus(double coefficient, int variable) {
            coefficients.merge(variable, coefficient, Double::sum);
            return this;
        }

        /** The same expression, which grows by itself. */
        public Sum copy() {
            Sum copy = new Sum();
            copy.coefficients.putAll(coefficients);
            return copy;
        }

        /** Whether it has no terms. */
        public boolean isEmpty() {
            return coefficients.isEmpty();
        }
    }
}

package freshfurrow.solver.linear;

import java.util.List;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/**
 * Proposes weights of the rows of a linear program that give a good bound, by solving its dual: maximise b y - u t where t is at
 * least y A - c and y and t are 0 or more. What it returns is not trusted: {@link ProvenBound} works out what it proves.
 */
final class RowWeights {
    private static final int MOST_STEPS = 20_000;

    private RowWeights() {}

    /** A weight for each row, the same ones for the same program on every run. */
    static double[] of(LinearProgram program) {
        List<LinearProgram.Row> rows = program.rows();
        double scale = 1;
        for (int j = 0; j < program.variables(); j++) {
            scale = Math.max(scale, program.upper(j));
        }
        ExpressionsBasedModel dual = new ExpressionsBasedModel();
        // Of this size and shape dense tables are several times as fast.
        dual.options.sparse = false;
        // By steps, not by the clock, lest the same season give other bounds on a busy machine.
        dual.options.iterations_abort = MOST_STEPS;
        dual.options.iterations_suffice = MOST_STEPS;
        Expression[] columns = new Expression[program.variables()];
        for (int j = 0; j < columns.length; j++) {
            Variable excess = dual.addVariable("t" + j).lower(0).weight(-program.upper(j) / scale);
            columns[j] = dual.addExpression("c" + j).upper(program.cost(j)).set(excess, -1);
        }
        for (int i = 0; i < rows.size(); i++) {
            LinearProgram.Row row = rows.get(i);
            Variable weight = dual.addVariable("y" + i).lower(0).weight(row.atLeast() / scale);
            for (LinearProgram.Term term : row.terms()) {
                columns[term.variable()].set(weight, term.coefficient());
            }
        }
        Optimisation.Result result = dual.maximise();
        double[] weights = new double[rows.size()];
        for (int i = 0; i < weights.length; i++) {
            weights[i] = result.doubleValue(columns.length + i);
        }
        return weights;
    }
}

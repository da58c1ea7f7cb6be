package freshfurrow.solver.linear;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class ProvenBoundTest {
    /** Minimise 2 x + 3 y with x + y &gt;= 4, x &lt;= 3, y &lt;= 5: x = 3 and y = 1 cost 9. */
    private static LinearProgram program() {
        LinearProgram program = new LinearProgram();
        int x = program.variable(3);
        int y = program.variable(5);
        program.addCost(x, 2);
        program.addCost(y, 3);
        program.atLeast(new LinearProgram.Sum().plus(1, x).plus(1, y), 4);
        return program;
    }

    @Test
    void theBestWeightsProveTheLeastCost() {
        // 3 x 4 for the row, less (3 - 2) x 3 for x, of which there are 3 at the most
        assertThat(ProvenBound.of(program(), new double[] {3})).isEqualByComparingTo("9");
        assertThat(ProvenBound.of(program(), RowWeights.of(program())).doubleValue())
                .isBetween(9 - 1e-9, 9.0);
    }

    @Test
    void otherWeightsProveLess() {
        assertThat(ProvenBound.of(program(), new double[] {2})).isEqualByComparingTo("8");
        assertThat(ProvenBound.of(program(), new double[] {4})).isEqualByComparingTo("5");
    }

    @Test
    void weightsThatMakeNoSenseCountAsNone() {
        assertThat(ProvenBound.of(program(), new double[] {-1})).isEqualByComparingTo("0");
        assertThat(ProvenBound.of(program(), new double[] {Double.NaN})).isEqualByComparingTo("0");
        assertThat(ProvenBound.of(program(), new double[] {Double.POSITIVE_INFINITY}))
                .isEqualByComparingTo("0");
    }

    @Property(tries = 200)
    void noWeightsProveMoreThanAPointCosts(@ForAll long seed) {
        Random random = new Random(seed);
        LinearProgram program = new LinearProgram();
        double[] point = new double[6];
        double cost = 0;
        for (int j = 0; j < point.length; j++) {
            double upper = random.nextInt(10);
            double costPerUnit = random.nextInt(9) - 3;
            point[j] = random.nextDouble() * upper;
            program.addCost(program.variable(upper), costPerUnit);
            cost += costPerUnit * point[j];
        }
        double[] weights = new double[8];
        for (int i = 0; i < weights.length; i++) {
            LinearProgram.Sum sum = new LinearProgram.Sum();
            double atPoint = 0;
            for (int j = 0; j < point.length; j++) {
                double coefficient = random.nextInt(7) - 3;
                sum.plus(coefficient, j);
                atPoint += coefficient * point[j];
            }
            program.atLeast(sum, atPoint - random.nextDouble());
            weights[i] = 2 * random.nextDouble();
        }

        assertThat(ProvenBound.of(program, weights).doubleValue()).isLessThanOrEqualTo(cost + 1e-9);
        assertThat(ProvenBound.of(program, RowWeights.of(program)).doubleValue())
                .isLessThanOrEqualTo(cost + 1e-9);
    }
}

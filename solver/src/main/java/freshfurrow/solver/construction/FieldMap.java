package freshfurrow.solver.construction;

import freshfurrow.solver.estimate.SeasonEstimate;
import java.util.function.IntToDoubleFunction;

/**
 * Where fields lie on a plane, as far as the roads between them tell: two fields far apart span the first axis, two that are far apart
 * though they lie alike on it the second. This is FastMap (Faloutsos and Lin 1995, Proceedings of ACM SIGMOD) in two dimensions.
 */
final class FieldMap {
    private final double[] x;
    private final double[] y;

    FieldMap(SeasonEstimate season) {
        int fields = season.fieldCount();
        x = axis(fields, (from, to) -> square(season.metres(from, to)));
        y = axis(fields, (from, to) -> square(season.metres(from, to)) - square(x[from] - x[to]));
    }

    /** The places of fields on axes that are known. */
    FieldMap(double[] x, double[] y) {
        this.x = x.clone();
        this.y = y.clone();
    }

    int fieldCount() {
        return x.length;
    }

    /** Metres along the first axis. */
    double x(int field) {
        return x[field];
    }

    /** Metres along the second axis. */
    double y(int field) {
        return y[field];
    }

    private static double square(double metres) {
        return metres * metres;
    }

    private static double[] axis(int fields, Squares squares) {
        double[] along = new double[fields];
        int one = farthest(fields, other -> squares.between(0, other));
        int two = farthest(fields, other -> squares.between(one, other));
        double length = fields == 0 ? 0 : squares.between(one, two);
        for (int field = 0; field < fields && length > 0; field++) {
            along[field] =
                    (squares.between(one, field) + length - squares.between(field, two)) / (2 * Math.sqrt(length));
        }
        return along;
    }

    private static int farthest(int fields, IntToDoubleFunction distance) {
        int farthest = 0;
        for (int field = 1; field < fields; field++) {
            if (distance.applyAsDouble(field) > distance.applyAsDouble(farthest)) {
                farthest = field;
            }
        }
        return farthest;
    }

    /** Squared metres from one field to another; roads are no straight lines, so it may come out below 0 on the second axis. */
    private interface Squares {
        double between(int from, int to);
    }
}

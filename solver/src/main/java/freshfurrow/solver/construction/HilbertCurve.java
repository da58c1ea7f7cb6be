package freshfurrow.solver.construction;

import java.util.stream.IntStream;

/** The curve of Hilbert (1891, Mathematische Annalen 38), which leaves no quarter of the land, of a quarter and so on before it is done with it. */
final class HilbertCurve implements Curve {
    /** Squares along a side of the land: enough that fields of thousands of kilometres lie in squares of their own. */
    private static final int SIDE = 1 << 15;

    @Override
    public double[] along(FieldMap map) {
        int fields = map.fieldCount();
        double[] x =
                Curves.shares(IntStream.range(0, fields).mapToDouble(map::x).toArray());
        double[] y =
                Curves.shares(IntStream.range(0, fields).mapToDouble(map::y).toArray());
        double[] along = new double[fields];
        for (int field = 0; field < fields; field++) {
            along[field] = at((int) (x[field] * (SIDE - 1)), (int) (y[field] * (SIDE - 1)));
        }
        return along;
    }

    /** Squares that the curve passes before that one. */
    private static long at(int x, int y) {
        long passed = 0;
        int column = x;
        int row = y;
        for (int half = SIDE / 2; half > 0; half /= 2) {
            boolean right = column >= half;
            boolean upper = row >= half;
            passed += (long) half * half * (right ? (upper ? 2 : 3) : (upper ? 1 : 0));
            column -= right ? half : 0;
            row -= upper ? half : 0;
            if (!upper) {
                int turned = right ? half - 1 - row : row;
                row = right ? half - 1 - column : column;
                column = turned;
            }
        }
        return passed;
    }
}

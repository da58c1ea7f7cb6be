package freshfurrow.solver.construction;

import freshfurrow.solver.estimate.SeasonEstimate;
import java.util.List;
import java.util.stream.Stream;

/** The convoys of a season that are tried. */
final class Convoys {
    private static final List<Double> WIDTHS = List.of(9.0, 3.0);

    private static final List<Double> DEGREES = List.of(0.0, 45.0, 90.0, 135.0);

    /** Windows that close within four days as one, and all as one. */
    private static final List<Integer> BLOCK_DAYS = List.of(4, Integer.MAX_VALUE);

    private Convoys() {}

    /** Each curve with windows one after the other, and with all at once. */
    static List<NextField> of(SeasonEstimate season) {
        FieldMap map = new FieldMap(season);
        return BLOCK_DAYS.stream()
                .flatMap(days -> curves().map(curve -> (NextField) new Convoy(season, curve, map, days)))
                .toList();
    }

    private static Stream<Curve> curves() {
        Stream<Curve> strips =
                WIDTHS.stream().flatMap(width -> DEGREES.stream().map(degrees -> new Strips(degrees, width)));
        return Stream.concat(strips, Stream.of(new HilbertCurve()));
    }
}

package freshfurrow.solver.construction;

import freshfurrow.solver.construction.Convoy.Detours;
import freshfurrow.solver.construction.Convoy.Way;
import java.util.List;
import java.util.stream.Stream;

/** The convoys of a season that are tried. */
final class Convoys {
    private static final List<Double> WIDTHS = List.of(9.0, 3.0);

    private static final List<Double> DEGREES = List.of(0.0, 45.0, 90.0, 135.0);

    /** Windows that close within four days as one, and all as one. */
    private static final List<Integer> BLOCK_DAYS = List.of(4, Integer.MAX_VALUE);

    private static final Detours USUAL = new Detours(18, 20);

    private static final List<Detours> OTHERS = List.of(new Detours(0, 0), new Detours(6, 10));

    private Convoys() {}

    /** Each curve with windows one after the other, and with all at once. */
    static List<Way> usual() {
        return BLOCK_DAYS.stream()
                .flatMap(days -> curves().map(curve -> new Way(curve, days, USUAL)))
                .toList();
    }

    /** The same way with other detours. */
    static Stream<Way> others(Way way) {
        return OTHERS.stream().map(way::with);
    }

    private static Stream<Curve> curves() {
        Stream<Curve> strips =
                WIDTHS.stream().flatMap(width -> DEGREES.stream().map(degrees -> new Strips(degrees, width)));
        return Stream.concat(strips, Stream.of(new HilbertCurve()));
    }
}

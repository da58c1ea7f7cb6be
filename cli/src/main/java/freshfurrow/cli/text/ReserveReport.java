package freshfurrow.cli.text;

import static freshfurrow.model.quantity.Factors.MINUTE_S;

import freshfurrow.model.compare.ComparedSprings;
import freshfurrow.model.compare.Measure;
import freshfurrow.model.compare.ReserveCurve;
import freshfurrow.model.compare.ReserveCurve.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What reserves bring and cost, as text. */
final class ReserveReport {
    private static final int WIDTH = 120;

    private final ReserveCurve curve;
    private final MeasureText text;
    private final String areaDays;

    private ReserveReport(ReserveCurve curve, ComparedSprings compared) {
        this.curve = curve;
        this.text = new MeasureText(compared.rules());
        this.areaDays = compared.rules().units().area().symbol() + "-days";
    }

    /** Begins with an empty line; nothing at all when no reserve was tried. */
    static List<String> lines(ComparedSprings compared) {
        return ReserveCurve.of(compared)
                .map(curve -> new ReserveReport(curve, compared).lines())
                .orElse(List.of());
    }

    private List<String> lines() {
        List<Table.Column> columns = new ArrayList<>();
        columns.add(Table.Column.left("Reserve, average spring"));
        List<Measure> measures = List.of(Measure.STALE, Measure.DUMPED, Measure.UNSERVED, Measure.LATE, Measure.FILLS);
        measures.forEach(measure -> columns.add(Table.Column.right(text.label(measure))));
        columns.add(Table.Column.right("sum"));
        Table table = new Table(WIDTH, columns, "");
        for (Point point : curve.points()) {
            table.row(
                    List.of(
                            reserve(point),
                            text.value(Measure.STALE, point.staleLoads()),
                            text.value(Measure.DUMPED, point.dumpedKg()),
                            text.value(Measure.UNSERVED, point.unservedHa()),
                            text.value(Measure.LATE, point.lateHaDays()),
                            text.value(Measure.FILLS, point.fills()),
                            sum(point)),
                    List.of());
        }
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.addAll(table.lines());
        lines.add(
                curve.isMoney()
                        ? "The sum is what a season costs to run."
                        : "The sum is late " + areaDays
                                + ", unplanted area by all days of the season, and the area that"
                                + " lost compost was for as one day late.");
        lines.add("The sum is least with a reserve of " + reserve(curve.least()) + "." + asGood());
        return lines;
    }

    private String asGood() {
        List<Point> asGood = curve.asGood();
        return asGood.isEmpty()
                ? ""
                : " These springs do not tell it apart from "
                        + asGood.stream().map(ReserveReport::reserve).collect(Collectors.joining(", ")) + ".";
    }

    private String sum(Point point) {
        return curve.isMoney() ? text.money(point.sum()) : text.value(Measure.LATE, point.sum()) + " " + areaDays;
    }

    private static String reserve(Point point) {
        return point.reserveS() % MINUTE_S == 0 ? point.reserveS() / MINUTE_S + " min" : point.reserveS() + " s";
    }
}

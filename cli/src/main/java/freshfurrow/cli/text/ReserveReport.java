package freshfurrow.cli.text;

import static freshfurrow.model.quantity.Factors.MINUTE_S;

import freshfurrow.model.compare.ComparedSprings;
import freshfurrow.model.compare.Measure;
import freshfurrow.model.compare.ReserveCurve;
import freshfurrow.model.compare.ReserveCurve.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What reserves bring and cost, as text. */
public final class ReserveReport {
    private static final int WIDTH = 120;

    private static final List<Measure> MEASURES =
            List.of(Measure.STALE, Measure.DUMPED, Measure.UNSERVED, Measure.LATE, Measure.FILLS);

    private final ReserveCurve curve;
    private final MeasureText text;
    private final String areaDays;

    private ReserveReport(ReserveCurve curve, ComparedSprings compared) {
        this.curve = curve;
        this.text = new MeasureText(compared.rules());
        this.areaDays = compared.rules().units().area().symbol() + "-days";
    }

    /** What is said of the reserves that were tried; empty when none was. */
    public static Optional<ReserveReport> of(ComparedSprings compared) {
        return ReserveCurve.of(compared).map(curve -> new ReserveReport(curve, compared));
    }

    /** What each row tells. */
    public List<String> headings() {
        return Stream.of(Stream.of("reserve"), MEASURES.stream().map(text::label), Stream.of("sum"))
                .flatMap(part -> part)
                .toList();
    }

    /** A row for each reserve, of an average spring. */
    public List<List<String>> rows() {
        return curve.points().stream()
                .map(point -> List.of(
                        reserve(point),
                        text.value(Measure.STALE, point.staleLoads()),
                        text.value(Measure.DUMPED, point.dumpedKg()),
                        text.value(Measure.UNSERVED, point.unservedHa()),
                        text.value(Measure.LATE, point.lateHaDays()),
                        text.value(Measure.FILLS, point.fills()),
                        sum(point)))
                .toList();
    }

    /** What the sum is, and where it is least. */
    public List<String> said() {
        return List.of(
                curve.isMoney()
                        ? "The sum is what a season costs to run."
                        : "The sum is late " + areaDays
                                + ", unplanted area by all days of the season, and the area that"
                                + " lost compost was for as one day late.",
                "The sum is least with a reserve of " + reserve(curve.least()) + "." + asGood());
    }

    /** Begins with an empty line. */
    List<String> lines() {
        List<Table.Column> columns = new ArrayList<>();
        for (String heading : headings()) {
            columns.add(columns.isEmpty() ? Table.Column.left(heading) : Table.Column.right(heading));
        }
        Table table = new Table(WIDTH, columns, "");
        rows().forEach(row -> table.row(row, List.of()));
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.add("Reserves, average spring");
        lines.addAll(table.lines());
        lines.addAll(said());
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

package freshfurrow.model.read.station;

import freshfurrow.model.quantity.Kind;
import freshfurrow.model.read.tree.CsvTable;
import freshfurrow.model.read.tree.FileProblem;
import freshfurrow.model.read.tree.Node;
import freshfurrow.model.read.tree.Place;
import freshfurrow.model.read.tree.TextFile;
import java.util.List;

/** A table of date, tmax, tmin and rain (RFC 4180) with the units in its header row; other columns are not looked at. */
final class StationTable {
    private static final String HEADER = "start it with date,tmax (C),tmin (C),rain (mm) or the like in F and in";

    private StationTable() {}

    static void read(TextFile file, Observations observations) throws FileProblem {
        CsvTable table = CsvTable.read(file);
        for (String column : List.of("date", "tmax", "tmin", "rain")) {
            if (!table.columns().contains(column)) {
                throw new FileProblem(table.place(), "has no column " + column, HEADER);
            }
        }
        checkUnit(table, "tmax", Kind.TEMPERATURE);
        checkUnit(table, "tmin", Kind.TEMPERATURE);
        checkUnit(table, "rain", Kind.RAIN);
        for (Node.Mapping row : table.rows()) {
            Place place = row.place();
            observations.day(place, text(row, "date"));
            observations.figure(place, Element.TMAX, text(row, "tmax"));
            observations.figure(place, Element.TMIN, text(row, "tmin"));
            observations.figure(place, Element.RAIN, text(row, "rain"));
        }
    }

    private static void checkUnit(CsvTable table, String column, Kind kind) throws FileProblem {
        String unit = table.unit(column);
        if (kind.has(unit)) {
            return;
        }
        throw new FileProblem(
                new Place(table.place().file(), table.place().line(), column),
                unit.isEmpty() ? "has no unit" : unit + " is not a unit of " + kind.noun(),
                "put a unit in the header: " + column + " (" + String.join(") or " + column + " (", kind.symbols())
                        + ")");
    }

    private static String text(Node.Mapping row, String column) {
        return row.entries().get(column) instanceof Node.Text text ? text.text() : "";
    }
}

package freshfurrow.model.edit;

import freshfurrow.model.read.tree.CsvTable;
import freshfurrow.model.read.tree.FileProblem;
import freshfurrow.model.read.tree.Node;
import freshfurrow.model.read.tree.Place;
import freshfurrow.model.read.tree.TextFile;
import java.util.ArrayList;
import java.util.List;

/** A CSV file (RFC 4180) with where its cells stand. */
final class CsvSheet {
    private final TextFile file;
    private final CsvTable table;
    private final CsvRow header;
    private final List<CsvRow> rows;

    private CsvSheet(TextFile file, CsvTable table, List<CsvRow> filled) {
        this.file = file;
        this.table = table;
        header = filled.get(0);
        rows = filled.subList(1, filled.size());
    }

    /** @throws FileProblem when the file is no table, or its cells cannot be told apart by position */
    static CsvSheet of(TextFile file) throws FileProblem {
        CsvTable table = CsvTable.read(file);
        List<CsvRow> filled = CsvRow.all(file.text()).stream()
                .filter(row ->
                        row.cells().stream().anyMatch(cell -> !cell.text().isBlank()))
                .toList();
        if (filled.size() != table.rows().size() + 1) {
            throw unclear(table.place());
        }
        CsvSheet sheet = new CsvSheet(file, table, filled);
        for (int i = 0; i < sheet.rows.size(); i++) {
            if (!sheet.agrees(i)) {
                throw unclear(table.rows().get(i).place());
            }
        }
        return sheet;
    }

    private static FileProblem unclear(Place place) {
        return new FileProblem(
                place, "has cells that cannot be told apart for certain", "save it again from a spreadsheet");
    }

    private boolean agrees(int row) {
        for (int i = 0; i < columns().size(); i++) {
            String read =
                    table.rows().get(row).entries().get(columns().get(i)) instanceof Node.Text text ? text.text() : "";
            List<CsvRow.Cell> cells = rows.get(row).cells();
            String seen = i < cells.size() ? cells.get(i).text().strip() : "";
            if (!read.equals(seen) && !read.equals(seen + " " + table.units().get(i))) {
                return false;
            }
        }
        return true;
    }

    TextFile file() {
        return file;
    }

    List<String> columns() {
        return table.columns();
    }

    String unit(int column) {
        return table.units().get(column);
    }

    CsvRow header() {
        return header;
    }

    /** Without the header and blank ones. */
    List<CsvRow> rows() {
        return rows;
    }

    /** What the rows say, each by column. */
    List<Node.Mapping> entries() {
        return table.rows();
    }

    /** Numbers, from 0, of the rows that have an id. */
    List<Integer> withId(String id) {
        List<Integer> found = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            if (entries().get(i).entries().get("id") instanceof Node.Text text
                    && text.text().equals(id)) {
                found.add(i);
            }
        }
        return found;
    }
}

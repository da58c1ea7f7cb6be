package freshfurrow.model.edit;

import freshfurrow.model.read.tree.FileProblem;
import freshfurrow.model.read.tree.Node;
import freshfurrow.model.read.tree.Place;
import freshfurrow.model.read.tree.TextFile;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A CSV file of fields, one a row, that is edited by position. */
final class CsvFields implements FieldsText {
    private static final String ID = "id";

    private final CsvSheet sheet;

    private CsvFields(CsvSheet sheet) {
        this.sheet = sheet;
    }

    static CsvFields of(TextFile file) throws FileProblem {
        return new CsvFields(CsvSheet.of(file));
    }

    @Override
    public TextFile file() {
        return sheet.file();
    }

    @Override
    public Node.Mapping tree() {
        Map<String, Node> fields = new LinkedHashMap<>();
        for (Node.Mapping row : sheet.entries()) {
            Map<String, Node> cells = new LinkedHashMap<>(row.entries());
            if (cells.remove(ID) instanceof Node.Text id) {
                fields.putIfAbsent(id.text(), new Node.Mapping(row.place(), cells));
            }
        }
        return new Node.Mapping(new Place(file().name(), 1, "fields"), fields);
    }

    @Override
    public FieldsText with(Edit edit) throws FileProblem {
        String id = edit.path().get(0);
        List<Integer> found = sheet.withId(id);
        if (found.size() > 1) {
            throw problem(edit, "stands in " + found.size() + " rows", "give every field an id of its own");
        }
        Optional<Integer> row = found.stream().findFirst();
        if (edit.path().size() > 2) {
            throw problem(edit, "has no parts: a cell is one value", "write the whole cell");
        }
        if (edit instanceof Edit.Remove) {
            if (row.isEmpty()) {
                throw problem(edit, "has no row", "look at the season as it is now");
            }
            return edit.path().size() == 1 ? withoutRow(row.get()) : withCells(edit, row, cells(edit, ""));
        }
        if (edit.path().size() == 1) {
            return withCells(edit, row, cells(edit));
        }
        return withCells(edit, row, cells(edit, cell(edit, row)));
    }

    private String cell(Edit edit, Optional<Integer> row) throws FileProblem {
        if (edit instanceof Edit.Set set) {
            return text(edit, set.value());
        }
        String column = edit.path().get(1);
        String added = text(edit, ((Edit.Append) edit).item());
        return row.map(number -> sheet.entries().get(number).entries().get(column)) // the cell so far
                .map(before -> before instanceof Node.Text text ? text.text() + " " + added : added)
                .orElse(added);
    }

    private static Map<String, String> cells(Edit edit, String text) {
        return Map.of(edit.path().get(1), text);
    }

    private Map<String, String> cells(Edit edit) throws FileProblem {
        if (!(edit instanceof Edit.Set set) || !(set.value() instanceof Value.Entries entries)) {
            throw problem(edit, "is a row of cells", "set its cells");
        }
        Map<String, String> cells = new LinkedHashMap<>();
        for (Map.Entry<String, Value> entry : entries.entries().entrySet()) {
            cells.put(entry.getKey(), text(edit, entry.getValue()));
        }
        return cells;
    }

    private String text(Edit edit, Value value) throws FileProblem {
        return CellText.of(value).orElseThrow(() -> problem(edit, "is more than a cell can hold", "write one value"));
    }

    private CsvFields withoutRow(int number) throws FileProblem {
        CsvRow row = sheet.rows().get(number);
        Change change = new Lines(file().text()).deletion(row.start(), row.end());
        List<Map<String, String>> wanted = said(sheet);
        wanted.remove(number);
        return held(List.of(change), wanted, sheet.entries().get(number).place());
    }

    private CsvFields withCells(Edit edit, Optional<Integer> number, Map<String, String> texts) throws FileProblem {
        Map<String, String> cells = new LinkedHashMap<>(texts);
        if (number.isEmpty()) {
            cells.putIfAbsent(ID, edit.path().get(0));
        }
        List<String> columns = new ArrayList<>(sheet.columns());
        cells.forEach((column, text) -> {
            if (!columns.contains(column) && !text.isEmpty()) {
                columns.add(column);
            }
        });
        List<Change> changes = new ArrayList<>(newColumns(columns));
        Map<String, String> written = new LinkedHashMap<>();
        Map<String, String> wanted = new LinkedHashMap<>();
        cells.forEach((column, text) -> {
            String unit = unit(columns, column);
            written.put(column, CellText.withoutUnit(text, unit));
            wanted.put(column, CellText.withUnit(written.getOrDefault(column, ""), unit));
        });
        List<Map<String, String>> all = said(sheet);
        if (number.isPresent()) {
            changes.addAll(new CsvCells(columns, written).into(sheet.rows().get(number.get())));
            all.get(number.get()).putAll(wanted);
            all.get(number.get()).values().removeIf(String::isEmpty);
        } else {
            changes.add(newRow(new CsvCells(columns, written)));
            wanted.values().removeIf(String::isEmpty);
            all.add(wanted);
        }
        return held(changes, all, place(edit));
    }

    private List<Change> newColumns(List<String> columns) {
        Map<String, String> added = new LinkedHashMap<>();
        columns.subList(sheet.columns().size(), columns.size()).forEach(column -> added.put(column, column));
        return new CsvCells(columns, added).into(sheet.header());
    }

    private Change newRow(CsvCells cells) {
        List<CsvRow> rows = sheet.rows();
        CsvRow last = rows.isEmpty() ? sheet.header() : rows.get(rows.size() - 1);
        return Change.insert(last.end(), new Lines(file().text()).lineBreak() + cells.row());
    }

    private String unit(List<String> columns, String column) {
        int index = columns.indexOf(column);
        return index >= 0 && index < sheet.columns().size() ? sheet.unit(index) : "";
    }

    private CsvFields held(List<Change> changes, List<Map<String, String>> wanted, Place place) throws FileProblem {
        TextFile changed = file().changed(Change.applied(file().text(), changes));
        FileProblem refused = new FileProblem(
                place,
                "cannot be written so that it is read back the same",
                "change it in " + file().name() + " itself");
        CsvSheet after;
        try {
            after = CsvSheet.of(changed);
        } catch (FileProblem e) {
            throw refused;
        }
        if (!changed.isUnicode() || !said(after).equals(wanted)) {
            throw refused;
        }
        return new CsvFields(after);
    }

    private static List<Map<String, String>> said(CsvSheet sheet) {
        List<Map<String, String>> rows = new ArrayList<>();
        for (Node.Mapping row : sheet.entries()) {
            Map<String, String> cells = new LinkedHashMap<>();
            row.entries().forEach((column, cell) -> cells.put(column, ((Node.Text) cell).text()));
            rows.add(cells);
        }
        return rows;
    }

    private Place place(Edit edit) {
        List<Integer> rows = sheet.withId(edit.path().get(0));
        int line = rows.isEmpty() ? 0 : sheet.entries().get(rows.get(0)).place().line();
        return new Place(file().name(), line, String.join(".", edit.path()));
    }

    private FileProblem problem(Edit edit, String reason, String remedy) {
        return new FileProblem(place(edit), reason, remedy);
    }
}

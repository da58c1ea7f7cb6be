package freshfurrow.model.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Cells that are to be written, by column.
 *
 * @param columns all of the table, in order
 */
record CsvCells(List<String> columns, Map<String, String> texts) {
    /** A row of its own, with a cell for each column. */
    String row() {
        return columns.stream()
                .map(column -> written(texts.getOrDefault(column, ""), false))
                .collect(Collectors.joining(","));
    }

    /** The cells of a row replaced, or added behind those that it has. */
    List<Change> into(CsvRow row) {
        List<Change> changes = new ArrayList<>();
        StringBuilder behind = new StringBuilder();
        int missing = row.cells().size();
        for (int i = 0; i < columns.size(); i++) {
            String text = texts.get(columns.get(i));
            if (text == null) {
                continue;
            }
            if (i < row.cells().size()) {
                CsvRow.Cell cell = row.cells().get(i);
                changes.add(new Change(cell.start(), cell.end(), written(text, cell.quoted())));
            } else if (!text.isEmpty()) {
                behind.append(",".repeat(i - missing + 1)).append(written(text, false));
                missing = i + 1;
            }
        }
        if (!behind.isEmpty()) {
            changes.add(Change.insert(row.end(), behind.toString()));
        }
        return changes;
    }

    /** In quotes where RFC 4180 needs them, or where the cell had them before. */
    private static String written(String text, boolean quoted) {
        boolean needed = text.chars().anyMatch(character -> ",\"\r\n".indexOf(character) >= 0);
        return quoted || needed ? '"' + text.replace("\"", "\"\"") + '"' : text;
    }
}

package freshfurrow.model.edit;

import java.util.ArrayList;
import java.util.List;

/**
 * One row of a CSV text, which may be of several lines.
 *
 * @param start of its first character
 * @param end before its line break
 * @param next behind its line break, if it has one
 */
record CsvRow(int start, int end, int next, List<Cell> cells) {
    /**
     * A cell from {@code start} up to {@code end}, with its quotes.
     *
     * @param text what it says, without quotes
     */
    record Cell(int start, int end, boolean quoted, String text) {}

    /** All rows of a text in which every quote is closed. */
    static List<CsvRow> all(String text) {
        List<CsvRow> rows = new ArrayList<>();
        int at = 0;
        while (at < text.length()) {
            CsvRow row = row(text, at);
            rows.add(row);
            at = row.next();
        }
        return rows;
    }

    private static CsvRow row(String text, int start) {
        List<Cell> cells = new ArrayList<>();
        int at = start;
        while (true) {
            Cell cell = at < text.length() && text.charAt(at) == '"' ? quoted(text, at) : bare(text, at);
            cells.add(cell);
            at = cell.end();
            if (at >= text.length() || text.charAt(at) != ',') {
                return new CsvRow(start, at, new Lines(text).next(at), cells);
            }
            at++;
        }
    }

    private static Cell bare(String text, int start) {
        int end = cellEnd(text, start);
        return new Cell(start, end, false, text.substring(start, end));
    }

    private static int cellEnd(String text, int from) {
        int end = from;
        while (end < text.length() && ",\r\n".indexOf(text.charAt(end)) < 0) {
            end++;
        }
        return end;
    }

    private static Cell quoted(String text, int start) {
        int at = start + 1;
        while (at < text.length() && (text.charAt(at) != '"' || text.startsWith("\"\"", at))) {
            at += text.charAt(at) == '"' ? 2 : 1;
        }
        String said = text.substring(start + 1, Math.min(at, text.length())).replace("\"\"", "\"");
        return new Cell(start, cellEnd(text, Math.min(at + 1, text.length())), true, said);
    }
}

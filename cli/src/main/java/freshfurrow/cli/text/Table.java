package freshfurrow.cli.text;

import java.util.ArrayList;
import java.util.List;

/** Columns of text, two blanks apart. The last column is set flush left and wraps between its parts. */
public final class Table {
    private static final String GAP = "  ";
    private static final String PART_GAP = ", ";

    private final List<Column> columns;
    private final String lastHeader;
    private final int width;
    private final List<Row> rows = new ArrayList<>();

    /** A column before the last one. */
    public record Column(String header, boolean flushRight) {
        /** Set flush left. */
        public static Column left(String header) {
            return new Column(header, false);
        }

        /** Set flush right. */
        public static Column right(String header) {
            return new Column(header, true);
        }
    }

    private record Row(List<String> cells, List<String> lastCell) {}

    /**
     * A table without rows.
     *
     * @param width longest line wished for, in characters; a part too long for it stands alone on its line
     */
    public Table(int width, List<Column> columns, String lastHeader) {
        this.columns = List.copyOf(columns);
        this.lastHeader = lastHeader;
        this.width = width;
    }

    /**
     * Adds a row.
     *
     * @param lastCell the parts of the last column's cell
     */
    public void row(List<String> cells, List<String> lastCell) {
        if (cells.size() != columns.size()) {
            throw new IllegalArgumentException(cells.size() + " cells for " + columns.size() + " columns");
        }
        rows.add(new Row(List.copyOf(cells), List.copyOf(lastCell)));
    }

    /** The header and the rows, a line an entry. */
    public List<String> lines() {
        int[] widths = new int[columns.size()];
        int indent = 0;
        for (int i = 0; i < widths.length; i++) {
            int column = i;
            widths[i] = rows.stream()
                    .mapToInt(row -> row.cells.get(column).length())
                    .reduce(columns.get(i).header.length(), Math::max);
            indent += widths[i] + GAP.length();
        }
        List<String> lines = new ArrayList<>();
        lines.add((line(columns.stream().map(Column::header).toList(), widths) + lastHeader).stripTrailing());
        for (Row row : rows) {
            List<String> wrapped = wrap(row.lastCell, width - indent);
            lines.add((line(row.cells, widths) + wrapped.get(0)).stripTrailing());
            for (String more : wrapped.subList(1, wrapped.size())) {
                lines.add(" ".repeat(indent) + more);
            }
        }
        return lines;
    }

    private String line(List<String> cells, int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < widths.length; i++) {
            String padding = " ".repeat(widths[i] - cells.get(i).length());
            line.append(columns.get(i).flushRight ? padding + cells.get(i) : cells.get(i) + padding)
                    .append(GAP);
        }
        return line.toString();
    }

    /** At least one line, possibly empty. */
    private static List<String> wrap(List<String> parts, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < parts.size(); i++) {
            String part = parts.get(i) + (i + 1 < parts.size() ? PART_GAP : "");
            if (line.length() > 0 && line.length() + part.stripTrailing().length() > width) {
                lines.add(line.toString().stripTrailing());
                line.setLength(0);
            }
            line.append(part);
        }
        lines.add(line.toString());
        return lines;
    }
}

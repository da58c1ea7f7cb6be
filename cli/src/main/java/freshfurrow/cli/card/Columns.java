package freshfurrow.cli.card;

import java.util.List;
import java.util.stream.IntStream;

/** Rows of cells in columns, set flush left, the first row being the heads. */
final class Columns {
    private Columns() {}

    static List<String> of(List<List<String>> rows) {
        int[] widths = IntStream.range(0, rows.get(0).size())
                .map(column -> rows.stream()
                        .mapToInt(row -> row.get(column).length())
                        .max()
                        .orElse(0))
                .toArray();
        return rows.stream().map(row -> line(row, widths)).toList();
    }

    private static String line(List<String> row, int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int column = 0; column < widths.length; column++) {
            String cell = row.get(column);
            line.append("  ").append(cell).append(" ".repeat(widths[column] - cell.length()));
        }
        return line.toString().stripTrailing();
    }
}

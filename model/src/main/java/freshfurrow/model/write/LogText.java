package freshfurrow.model.write;

import freshfurrow.model.log.Column;
import freshfurrow.model.read.tree.CsvTable;
import freshfurrow.model.read.tree.FileProblem;
import freshfurrow.model.read.tree.Node;
import freshfurrow.model.read.tree.TextFile;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVFormat;

/**
 * The text of a log that is to have more lines, in the order of columns and with the line ends that it has.
 *
 * @param before what the log's file holds; may be blank
 */
record LogText(TextFile before) {
    /** What RFC 4180 ends lines with. */
    private static final String CRLF = "\r\n";

    private static final Pattern NUMBER = Pattern.compile("[0-9]{1,6}");

    /** Number of the first line that {@link #addition} writes, from 1. */
    int firstNewLine() {
        long header = isNew() ? 1 : 0;
        return (int) (before.text().lines().count() + header + 1);
    }

    /**
     * What is to follow the file's last byte.
     *
     * @throws FileProblem when the log is not a table, or has no column for one of the cells
     */
    String addition(List<Map<Column, String>> lines) throws FileProblem {
        if (isNew()) {
            return line(Column.titles()) + CRLF + lines(Column.titles(), lines, 1, CRLF);
        }
        CsvTable table = CsvTable.read(before);
        for (Map<Column, String> cells : lines) {
            for (Column column : cells.keySet()) {
                refuseWithout(column, table);
            }
        }
        String eol = before.text().contains(CRLF) || !before.text().contains("\n") ? CRLF : "\n";
        String missingEnd = before.text().endsWith("\n") ? "" : eol;
        return missingEnd + lines(table.columns(), lines, nextNumber(table), eol);
    }

    /**
     * Those of some lines that are not there yet; one that is given twice, once.
     *
     * @throws FileProblem when the log is not a table
     */
    List<Map<Column, String>> lacking(List<Map<Column, String>> lines) throws FileProblem {
        Set<Map<Column, String>> there = new HashSet<>();
        if (!isNew()) {
            CsvTable.read(before).rows().forEach(row -> there.add(cells(row)));
        }
        return lines.stream().filter(line -> there.add(filled(line))).toList();
    }

    private static Map<Column, String> cells(Node.Mapping row) {
        Map<Column, String> cells = new EnumMap<>(Column.class);
        row.entries().forEach((title, cell) -> Column.of(title)
                .filter(column -> column != Column.ENTRY && cell instanceof Node.Text)
                .ifPresent(column -> cells.put(column, ((Node.Text) cell).text())));
        return cells;
    }

    private static Map<Column, String> filled(Map<Column, String> line) {
        Map<Column, String> cells = new EnumMap<>(Column.class);
        line.forEach((column, text) -> {
            if (!text.isBlank()) {
                cells.put(column, text.strip());
            }
        });
        return cells;
    }

    private static void refuseWithout(Column column, CsvTable table) throws FileProblem {
        if (table.columns().stream().map(Column::of).noneMatch(Optional.of(column)::equals)) {
            throw new FileProblem(
                    table.place(),
                    "has no column " + column.title(),
                    "add ," + column.title() + " at the end of the header row");
        }
    }

    private static String lines(List<String> titles, List<Map<Column, String>> lines, int firstNumber, String eol) {
        return IntStream.range(0, lines.size())
                .mapToObj(i -> line(row(titles, lines.get(i), firstNumber + i)) + eol)
                .collect(Collectors.joining());
    }

    private boolean isNew() {
        return before.text().isBlank();
    }

    private static int nextNumber(CsvTable table) {
        return 1
                + table.rows().stream()
                        .map(row -> row.entries().get(Column.ENTRY.title()))
                        .filter(cell -> cell instanceof Node.Text text
                                && NUMBER.matcher(text.text()).matches())
                        .mapToInt(cell -> Integer.parseInt(((Node.Text) cell).text()))
                        .max()
                        .orElse(0);
    }

    private static List<String> row(List<String> titles, Map<Column, String> cells, int number) {
        return titles.stream()
                .map(title -> title.equals(Column.ENTRY.title())
                        ? String.valueOf(number)
                        : Column.of(title).map(cells::get).orElse(""))
                .toList();
    }

    private static String line(List<String> cells) {
        return CSVFormat.RFC4180.format(cells.toArray());
    }
}

package freshfurrow.model.read.tree;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A CSV file (RFC 4180) with a header row. A unit in a header, as in {@code area (ac)}, is put behind each figure of the column
 * that has none of its own. Empty cells are left out.
 *
 * @param place of the header row
 * @param columns names without units
 * @param units of the columns; empty where the header has none
 * @param rows one mapping of column to text a row
 */
public record CsvTable(Place place, List<String> columns, List<String> units, List<Node.Mapping> rows) {
    private static final Pattern HEADER = Pattern.compile("(.*?)\\s*\\(([^)]*)\\)");
    private static final int LONGEST_NAME = 80;
    private static final Pattern LINE = Pattern.compile("line:? (\\d{1,9})");
    private static final Pattern BARE_NUMBER = Pattern.compile("[+-]?[0-9.]+([eE][+-]?[0-9]+)?");

    public CsvTable {
        columns = List.copyOf(columns);
        units = List.copyOf(units);
        rows = List.copyOf(rows);
    }

    /**
     * Reads a table.
     *
     * @throws FileProblem when it is empty, not comma-separated, has a column twice, a quote that never closes or a row with more
     *     cells than columns
     */
    public static CsvTable read(TextFile file) throws FileProblem {
        CSVFormat format =
                CSVFormat.RFC4180.builder().setIgnoreEmptyLines(false).get();
        try (CSVParser parser = format.parse(new StringReader(file.text()))) {
            return read(file, parser);
        } catch (IOException | UncheckedIOException e) {
            Matcher line = LINE.matcher(String.valueOf(e.getMessage()));
            throw new FileProblem(
                    new Place(file.name(), line.find() ? Integer.parseInt(line.group(1)) : 0, ""),
                    "a quote that is opened here is never closed, or more follows where it is closed",
                    "close every quote, and double a quote inside a cell");
        }
    }

    /** The unit in the header of a column; empty when it has none. */
    public String unit(String column) {
        return units.get(columns.indexOf(column));
    }

    private static CsvTable read(TextFile file, CSVParser parser) throws FileProblem {
        List<String> columns = new ArrayList<>();
        List<String> units = new ArrayList<>();
        List<Node.Mapping> rows = new ArrayList<>();
        Place header = new Place(file.name(), 1, "");
        int line = 1;
        for (CSVRecord csvRow : parser) {
            if (!blank(csvRow) && columns.isEmpty()) {
                header = new Place(file.name(), line, "");
                columns(csvRow, header, columns, units);
            } else if (!blank(csvRow)) {
                rows.add(row(csvRow, new Place(file.name(), line, ""), columns, units));
            }
            line = (int) parser.getCurrentLineNumber() + 1;
        }
        if (columns.isEmpty()) {
            throw new FileProblem(header, "is empty", "start it with a row of column names");
        }
        return new CsvTable(header, columns, units, rows);
    }

    private static void columns(CSVRecord csvRow, Place place, List<String> columns, List<String> units)
            throws FileProblem {
        if (csvRow.size() == 1 && csvRow.get(0).indexOf(';') >= 0) {
            throw new FileProblem(
                    place, "is separated by semicolons", "save it again with commas (and points in decimals)");
        }
        if (csvRow.size() == 1 && csvRow.get(0).indexOf('\t') >= 0) {
            throw new FileProblem(place, "is separated by tabs", "save it again with commas");
        }
        Set<String> seen = new HashSet<>();
        for (String cell : filled(csvRow)) {
            if (cell.isBlank()) {
                throw new FileProblem(place, "has a column without a name", "name it or take it out");
            }
            if (cell.length() > LONGEST_NAME) {
                throw new FileProblem(
                        place,
                        "has a column name of " + cell.length() + " letters",
                        "start it with a row of column names");
            }
            Matcher matcher = HEADER.matcher(cell.strip());
            boolean hasUnit = matcher.matches();
            String name = hasUnit ? matcher.group(1) : cell.strip();
            columns.add(name);
            units.add(hasUnit ? matcher.group(2).strip() : "");
            if (!seen.add(name.toLowerCase(Locale.ROOT))) {
                throw new FileProblem(place.under(name, place.line()), "is a column twice", "keep one of the two");
            }
        }
    }

    private static Node.Mapping row(CSVRecord csvRow, Place place, List<String> columns, List<String> units)
            throws FileProblem {
        List<String> filled = filled(csvRow);
        if (filled.size() > columns.size()) {
            throw new FileProblem(
                    place,
                    "has " + filled.size() + " cells for " + columns.size() + " columns",
                    "put cells that hold a comma in double quotes");
        }
        Map<String, Node> cells = new LinkedHashMap<>();
        for (int i = 0; i < filled.size(); i++) {
            String cell = filled.get(i).strip();
            if (!cell.isEmpty()) {
                String text =
                        !units.get(i).isEmpty() && BARE_NUMBER.matcher(cell).matches()
                                ? cell + " " + units.get(i)
                                : cell;
                cells.put(columns.get(i), new Node.Text(place.under(columns.get(i), place.line()), text));
            }
        }
        return new Node.Mapping(place, cells);
    }

    /** The cells of a row up to the last that holds anything: spreadsheets put empty ones behind it. */
    private static List<String> filled(CSVRecord csvRow) {
        int size = csvRow.size();
        while (size > 0 && csvRow.get(size - 1).isBlank()) {
            size--;
        }
        return csvRow.toList().subList(0, size);
    }

    private static boolean blank(CSVRecord csvRow) {
        return csvRow.stream().allMatch(String::isBlank);
    }
}

package freshfurrow.app.begin;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A table as it comes from a spreadsheet: by its clipboard, with tabs, or as a CSV file, with commas or semicolons.
 *
 * @param headings of the columns; empty texts where the first row is a field already
 * @param rows of cells
 */
public record PastedTable(List<String> headings, List<List<String>> rows) {
    /** More fields than a season may have. */
    private static final int MOST_ROWS = 10_001;

    private static final int MOST_COLUMNS = 200;

    public PastedTable {
        headings = List.copyOf(headings);
        rows = List.copyOf(rows);
    }

    /** Reads it; empty when it has no row, or a quote is never closed. */
    public static Optional<PastedTable> read(String text) {
        return cells(text).map(PastedTable::of);
    }

    /** Reads a file, which begins with headings, whatever they are called, unless a figure stands among them; empty as for a pasted one. */
    public static Optional<PastedTable> readFile(String text) {
        return cells(text).map(cells -> {
            boolean hasHeadings = cells.get(0).stream().noneMatch(cell -> cell.matches("[+-]?[0-9][0-9.,]*"));
            return hasHeadings ? of(cells, true) : of(cells);
        });
    }

    private static Optional<List<List<String>>> cells(String text) {
        String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
        List<List<String>> cells = new ArrayList<>();
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setDelimiter(delimiter(plain))
                .setIgnoreEmptyLines(true)
                .get();
        try (CSVParser parser = format.parse(new StringReader(plain))) {
            for (CSVRecord row : parser) {
                if (row.stream().anyMatch(cell -> !cell.isBlank()) && cells.size() <= MOST_ROWS) {
                    cells.add(
                            row.stream().limit(MOST_COLUMNS).map(String::strip).toList());
                }
            }
        } catch (IOException | UncheckedIOException e) {
            return Optional.empty();
        }
        return cells.isEmpty() ? Optional.empty() : Optional.of(cells);
    }

    /** The one that the first line has most of. */
    private static char delimiter(String text) {
        String first = text.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
        char best = ',';
        for (char candidate : new char[] {'\t', ';'}) {
            if (count(first, candidate) > count(first, best)) {
                best = candidate;
            }
        }
        return best;
    }

    private static long count(String text, char character) {
        return text.chars().filter(each -> each == character).count();
    }

    private static PastedTable of(List<List<String>> cells) {
        return of(cells, cells.get(0).stream().anyMatch(cell -> Heading.guess(cell)
                .isPresent()));
    }

    private static PastedTable of(List<List<String>> cells, boolean hasHeadings) {
        int columns = cells.stream().mapToInt(List::size).max().orElse(0);
        List<List<String>> even =
                cells.stream().map(row -> filled(row, columns)).toList();
        return hasHeadings
                ? new PastedTable(even.get(0), even.subList(1, even.size()))
                : new PastedTable(filled(List.of(), columns), even);
    }

    private static List<String> filled(List<String> row, int columns) {
        String[] cells = new String[columns];
        Arrays.fill(cells, "");
        for (int i = 0; i < row.size(); i++) {
            cells[i] = row.get(i);
        }
        return List.of(cells);
    }

    /** What each column seems to be about; no two are about the same. */
    public List<Optional<Heading>> guesses() {
        List<Optional<Heading>> guesses = new ArrayList<>();
        for (String heading : headings) {
            guesses.add(Heading.guess(heading).filter(guess -> !guesses.contains(Optional.of(guess))));
        }
        return guesses;
    }

    /**
     * The fields.
     *
     * @param about what each column is about, as somebody confirmed it
     */
    public List<FieldRow> fields(List<Optional<Heading>> about) {
        return rows.stream()
                .map(row -> new FieldRow(
                        cell(row, about, Heading.ID),
                        cell(row, about, Heading.NAME),
                        area(row, about),
                        cell(row, about, Heading.LAT),
                        cell(row, about, Heading.LON),
                        cell(row, about, Heading.CROP),
                        cell(row, about, Heading.DRAINAGE)))
                .toList();
    }

    private static String cell(List<String> row, List<Optional<Heading>> about, Heading heading) {
        int column = about.indexOf(Optional.of(heading));
        return column < 0 || column >= row.size() ? "" : row.get(column);
    }

    private String area(List<String> row, List<Optional<Heading>> about) {
        String area = cell(row, about, Heading.AREA);
        int column = about.indexOf(Optional.of(Heading.AREA));
        String unit = column < 0 ? "" : Heading.areaUnit(headings.get(column));
        return area.matches("[0-9.,]+") && !unit.isEmpty() ? area + " " + unit : area;
    }
}

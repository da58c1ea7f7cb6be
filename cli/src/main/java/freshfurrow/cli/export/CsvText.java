package freshfurrow.cli.export;

import freshfurrow.model.text.Formula;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * A table as CSV (RFC 4180: commas, CRLF, quotes where needed), with a byte-order mark, without which some spreadsheets
 * misread letters beyond ASCII.
 */
final class CsvText {
    private static final char BYTE_ORDER_MARK = '\ufeff';

    /** What some spreadsheets leave out before a cell that they take for a formula. */
    private static final String BREAKS = "\t\r\n";

    private final StringBuilder text = new StringBuilder().append(BYTE_ORDER_MARK);
    private final CSVPrinter printer;
    private final List<String> row = new ArrayList<>();

    CsvText(List<String> headers) {
        try {
            printer = new CSVPrinter(text, CSVFormat.RFC4180);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        row.addAll(headers);
        endRow();
    }

    /** A cell of text of any origin; an apostrophe before it where a spreadsheet would run it as a formula. */
    CsvText text(String cell) {
        row.add(Formula.begins(cell) || startsWithBreak(cell) ? "'" + cell : cell);
        return this;
    }

    private static boolean startsWithBreak(String cell) {
        return !cell.isEmpty() && BREAKS.indexOf(cell.charAt(0)) >= 0;
    }

    CsvText number(String figure) {
        row.add(figure);
        return this;
    }

    void endRow() {
        try {
            printer.printRecord(row);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        row.clear();
    }

    /** A figure with a point before its decimals, nothing between thousands and no zeros at its end. */
    static String figure(double figure, int decimals) {
        return BigDecimal.valueOf(figure)
                .setScale(decimals, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }

    @Override
    public String toString() {
        return text.toString();
    }
}

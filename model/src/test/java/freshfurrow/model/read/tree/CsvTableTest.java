package freshfurrow.model.read.tree;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The examples of RFC 4180, Common Format and MIME Type for CSV Files (Shafranovich, IETF 2005), section 2. */
final class CsvTableTest {
    private static final String HEADER = "field_name,field_name2,field_name3\r\n";

    /** Rules 1 to 3: lines end in CRLF, the last one may do without, the first one may be a header. */
    @ParameterizedTest
    @ValueSource(strings = {"aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n", "aaa,bbb,ccc\r\nzzz,yyy,xxx"})
    void linesEndInCrLfAndTheLastOneMayDoWithout(String rows) throws FileProblem {
        CsvTable table = table(HEADER + rows);
        assertThat(table.columns()).containsExactly("field_name", "field_name2", "field_name3");
        assertThat(cells(table)).containsExactly(List.of("aaa", "bbb", "ccc"), List.of("zzz", "yyy", "xxx"));
    }

    /** Rule 5: fields may or may not stand in double quotes. */
    @Test
    void fieldsMayStandInDoubleQuotes() throws FileProblem {
        assertThat(cells(table(HEADER + "\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx")))
                .containsExactly(List.of("aaa", "bbb", "ccc"), List.of("zzz", "yyy", "xxx"));
    }

    /** Rule 6: a line break, a double quote or a comma needs quotes. */
    @Test
    void aQuotedFieldMayHoldALineBreak() throws FileProblem {
        assertThat(cells(table(HEADER + "\"aaa\",\"b \r\nbb\",\"ccc\"\r\nzzz,yyy,xxx")))
                .containsExactly(List.of("aaa", "b \r\nbb", "ccc"), List.of("zzz", "yyy", "xxx"));
    }

    /** Rule 7: a double quote inside a field is doubled. */
    @Test
    void aDoubledQuoteIsOneQuote() throws FileProblem {
        assertThat(cells(table(HEADER + "\"aaa\",\"b\"\"bb\",\"ccc\"")))
                .containsExactly(List.of("aaa", "b\"bb", "ccc"));
    }

    @Test
    void aUnitInTheHeaderGoesBehindFiguresThatHaveNone() throws FileProblem {
        CsvTable table = table("id, area (ac) \n1,40\n2,16 ha\n3,-1.5e1\n4,about 40\n");
        assertThat(table.columns()).containsExactly("id", "area");
        assertThat(cells(table))
                .containsExactly(
                        List.of("1", "40 ac"),
                        List.of("2", "16 ha"),
                        List.of("3", "-1.5e1 ac"),
                        List.of("4", "about 40"));
    }

    private static CsvTable table(String text) throws FileProblem {
        return CsvTable.read(TextFile.of("table.csv", text));
    }

    private static List<List<String>> cells(CsvTable table) {
        return table.rows().stream()
                .map(row -> row.entries().values().stream()
                        .map(cell -> ((Node.Text) cell).text())
                        .collect(Collectors.toList()))
                .toList();
    }
}

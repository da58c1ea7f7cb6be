package freshfurrow.model.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tables of fields and of distances (RFC 4180) with something wrong in them. */
final class WrongFieldTablesTest {
    private static final String FIELDS = """
            id,name,area (ac),lat,lon,crop
            N40,North forty,40,41.02,-97.01,corn
            S80,"South eighty, flat",80,40.98,-97.0,corn
            """;

    @TempDir
    private Path folder = Path.of("");

    @Test
    void theTableThatTheOtherTestsChangeIsRight() {
        assertThat(withFields(FIELDS).problems()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = '|', textBlock = """
                    area (ac)  | area      | fields.csv:1: area: none of the figures has a unit; put a unit in the header, like area (ac)
                    area (ac)  | area (gal)| fields.csv:1: area: gal is not a unit of an area; use one of ac, ha, m2
                    area (ac)  | acres     | fields.csv:1: has no column area; start it with a header row like id,name,area (ac),lat,lon,crop
                    id,        | ident,    | fields.csv:1: has no column id; start it with a header row like id,name,area (ac),lat,lon,crop
                    ,crop      | ,crops    | fields.csv:1: has no column crop; start it with a header row like id,name,area (ac),lat,lon,crop
                    id,name    | id,nmae   | fields.csv:1: the column 'nmae' is not known; did you mean name?
                    id,name    | id,colour | fields.csv:1: the column 'colour' is not known; known are id, name, area, lat, lon, crop, window, recipe, drainage, lateWeight, extractWeight, work, planters, sprayers
                    id,name    | id,lat    | fields.csv:1: lat: is a column twice; keep one of the two
                    N40,       | ,         | fields.csv:2: the row has no id; give every field an id
                    N40,       | S80,      | fields.csv:3: the id S80 is taken by fields.csv:2 already; give fields, places and water points ids of their own
                    N40,       | yard,     | fields.csv:2: the id yard is taken by season.yaml:5 already; give fields, places and water points ids of their own
                    N40,       | N 40,     | fields.csv:2: id: 'N 40' is not an id; use 1 to 40 letters, digits, - and _, starting with a letter or digit
                    forty,40   | forty,-40 | fields.csv:2: area: -40 ac is out of range; use 0.003 to 49,000 ac (0.001 to 20,000 ha)
                    forty,40   | forty,    | fields.csv:2: area: is missing; write an area like area: 40 ac
                    forty,40   | forty,"4,0" | fields.csv:2: area: '4,0' is not a quantity; write an area like 40 ac, with a point in decimals and nothing between thousands
                    41.02      | 91.02     | fields.csv:2: lat: 91.02 is out of range; use degrees from -90 to 90
                    -97.01     | "97,01 W" | fields.csv:2: lon: '97,01 W' is not a plain number; write a number like -97.0
                    -97.01,corn| -97.01,cron | fields.csv:2: crop: there is no crop cron; did you mean corn?
                    -97.01,corn| -97.01,corn,wet | fields.csv:2: has 7 cells for 6 columns; put cells that hold a comma in double quotes
                    -97.01,corn| -97.01    | fields.csv:2: crop: is missing; write it like crop: corn
                    flat"      | flat      | fields.csv:3: a quote that is opened here is never closed, or more follows where it is closed; close every quote, and double a quote inside a cell
                    flat"      | flat"x    | fields.csv:3: a quote that is opened here is never closed, or more follows where it is closed; close every quote, and double a quote inside a cell
                    """)
    void aMistakeInTheTableIsOneLine(String before, String after, String line) {
        assertThat(FIELDS).contains(before);
        assertThat(withFields(FIELDS.replaceFirst(java.util.regex.Pattern.quote(before), after == null ? "" : after))
                        .problems())
                .containsExactly(line);
    }

    @Test
    void moreFieldsThanArePlannedAreOneProblem() {
        String rows = IntStream.rangeClosed(1, 10_001)
                .mapToObj(i -> "F" + i + ",,40,41,-97,corn\n")
                .collect(Collectors.joining());
        assertThat(withFields("id,name,area (ac),lat,lon,crop\n" + rows).problems())
                .containsExactly("fields.csv: has 10,001 fields, more than the 10,000 that are planned;"
                        + " split them into several seasons, by machines");
    }

    @Test
    void semicolonsAreNamed() {
        assertThat(withFields(FIELDS.replace(',', ';')).problems())
                .containsExactly(
                        "fields.csv:1: is separated by semicolons; save it again with commas (and points in decimals)");
    }

    @Test
    void tabsAreNamed() {
        assertThat(withFields(FIELDS.replace(',', '\t')).problems())
                .containsExactly("fields.csv:1: is separated by tabs; save it again with commas");
    }

    @Test
    void latin1IsNamedWithItsLine() throws IOException {
        WrittenSeason season = withFields(FIELDS);
        Files.write(
                folder.resolve("fields.csv"),
                FIELDS.replace("South eighty", "Ma\u00efs").getBytes(StandardCharsets.ISO_8859_1));
        assertThat(season.problems())
                .containsExactly("fields.csv:3: is not UTF-8 text here; save the file again as UTF-8");
    }

    @Test
    void aByteOrderMarkAndCarriageReturnsAreAccepted() {
        assertThat(withFields("\uFEFF" + FIELDS.replace("\n", "\r\n")).problems())
                .isEmpty();
    }

    @Test
    void blankLinesAreSkippedAndCountedInLineNumbers() {
        assertThat(withFields("\n" + FIELDS.replace("S80", "\n,,,,,\n\nS80").replace("80,40.98", "80,98"))
                        .problems())
                .containsExactly("fields.csv:7: lat: 98 is out of range; use degrees from -90 to 90");
    }

    @Test
    void aCellOverTwoLinesIsCountedInLineNumbers() {
        assertThat(withFields(FIELDS.replace("North forty", "\"North\nforty\"").replace("40.98", "98"))
                        .problems())
                .containsExactly(
                        "fields.csv:2: name: 'North?forty' contains an invisible character; leave it out",
                        "fields.csv:4: lat: 98 is out of range; use degrees from -90 to 90");
    }

    @Test
    void emptyColumnsBehindTheLastAreNoMistake() {
        assertThat(withFields("id,area (ac),lat,lon,crop,,\nN40,40,41.02,-97.01,corn,,\n,,,,,,\n")
                        .problems())
                .isEmpty();
    }

    @Test
    void aColumnWithoutANameAmongOthersIsOneLine() {
        assertThat(withFields("id,,area (ac),lat,lon,crop\nN40,,40,41.02,-97.01,corn\n")
                        .problems())
                .containsExactly("fields.csv:1: has a column without a name; name it or take it out");
    }

    @Test
    void aPlaceThatABrokenFileOfFieldsMayHoldIsNotMissed() {
        assertThat(withFields("id;name")
                        .with("extractAt: field\n    at: yard", "extractAt: field\n    at: N40")
                        .problems())
                .containsExactly(
                        "fields.csv:1: is separated by semicolons; save it again with commas (and points in decimals)");
    }

    @Test
    void aTableWithoutRowsHasNoField() {
        assertThat(withFields("id,name,area (ac),lat,lon,crop\n").problems())
                .containsExactly("season.yaml:10: fields: there is no field; write at least one field");
    }

    @Test
    void anEmptyTableIsNamed() {
        assertThat(withFields("").problems())
                .containsExactly("fields.csv:1: is empty; start it with a row of column names");
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = '|', textBlock = """
                    yard,well,2\\n | `` | ways.csv:1: one pair of places has no distance: yard to well; add a row for each pair; one direction is enough
                    yard,well,2\\n | yard,well,2\\nwell,yard,3\\n | ways.csv:3: another row gives a different distance from well to yard; keep one of them; distances hold in both directions
                    yard,well,2\\n | yard,well,2\\nyard,N41,3\\n | ways.csv:3: to: there is no place N41; did you mean N40?
                    yard,well,2\\n | yard,well,2\\nyard,yard,3\\n | ways.csv:3: from and to are both yard; leave out the row; the distance is 0
                    yard,well,2\\n | yard,well,-2\\n | ways.csv:2: distance: -2 mi is out of range; use 0 to 1,200 mi (2,000 km)
                    distance (mi)  | miles | ways.csv:1: has the columns from, to, miles; start it with from,to,distance (mi) or from,to,distance (km)
                    """)
    void aMistakeInTheDistancesIsOneLine(String before, String after, String line) {
        String ways =
                "from,to,distance (mi)\nyard,well,2\nyard,N40,3\nyard,S80,4\nwell,N40,3.5\nwell,S80,1\nN40,S80,2\n";
        String changed = ways.replace(before.replace("\\n", "\n"), after == null ? "" : after.replace("\\n", "\n"));
        assertThat(WrittenSeason.in(folder)
                        .with("roadFactor: 1.3", "matrix: ways.csv")
                        .withFile("ways.csv", changed)
                        .problems())
                .contains(line);
    }

    @Test
    void severalMissingDistancesAreOneLine() {
        assertThat(WrittenSeason.in(folder)
                        .with("roadFactor: 1.3", "matrix: ways.csv")
                        .withFile("ways.csv", "from,to,distance (km)\n")
                        .problems())
                .containsExactly(
                        "ways.csv:1: 6 pairs of places have no distance: yard to well, yard to N40, well to N40 and"
                                + " more; add a row for each pair; one direction is enough");
    }

    @Test
    void aRoadFactorBesideATableIsOneLine() {
        assertThat(WrittenSeason.in(folder)
                        .with("roadFactor: 1.3", "roadFactor: 1.3, matrix: ways.csv")
                        .withFile(
                                "ways.csv",
                                "from,to,distance (mi)\nyard,well,2\nyard,N40,3\nyard,S80,4\nwell,N40,3.5\nwell,S80,1\nN40,S80,2\n")
                        .problems())
                .containsExactly(
                        "season.yaml:40: travel.roadFactor: cannot be used with a table of distances; keep either"
                                + " roadFactor or matrix");
    }

    @Test
    void aBrokenFileOfFieldsIsNotBlamedOnTheDistances() {
        assertThat(withFields("id;name")
                        .with("roadFactor: 1.3", "matrix: ways.csv")
                        .withFile("ways.csv", "from,to,distance (mi)\nyard,well,2\nyard,N40,3\nwell,N40,3.5\n")
                        .problems())
                .containsExactly(
                        "fields.csv:1: is separated by semicolons; save it again with commas (and points in decimals)");
    }

    private WrittenSeason withFields(String content) {
        return WrittenSeason.in(folder).withFields("fields.csv", content);
    }
}

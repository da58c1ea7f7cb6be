package freshfurrow.cli.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import freshfurrow.cli.example.ExamplePlan;
import freshfurrow.cli.example.ExampleSeason;
import freshfurrow.cli.example.HostileNames;
import freshfurrow.cli.example.MixedExample;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.quantity.DisplayUnits;
import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Tables against RFC 4180, and as a general-purpose library reads them. */
final class TableFilesTest {
    private static final TableFiles TABLES = new TableFiles(ExampleSeason.season(), ExamplePlan.plan());

    static List<String> hostileNames() {
        return HostileNames.ALL;
    }

    @Test
    void aFieldHasItsWindowItsPlantingAndWhatIsLeftOfIt() throws Exception {
        List<CSVRecord> fields = records(TABLES.fields());
        assertThat(fields).hasSize(3);
        assertThat(fields.get(0).toMap())
                .containsAllEntriesOf(Map.of(
                        "id", "N40",
                        "area (ha)", "8",
                        "window last", "2027-04-25",
                        "planted from", "2027-04-20 07:16:00",
                        "planted until", "2027-04-20 09:16:00",
                        "days to spare", "5",
                        "late (ha-days)", "0",
                        "loads", "L0001"));
        // 4 ha a day after the window's last date
        assertThat(fields.get(1).toMap())
                .containsAllEntriesOf(Map.of("id", "S80", "days to spare", "-1", "late (ha-days)", "4"));
        assertThat(fields.get(2).toMap())
                .containsAllEntriesOf(Map.of(
                        "id", "E20",
                        "planted (ha)", "0",
                        "days to spare", "",
                        "not planted (ha)", "2",
                        "why not planted", "no compost left after 2027-04-21: 4 kg short"));
    }

    @Test
    void aFieldIsPlantedWithExtractAndWithoutOrSprayed() throws Exception {
        List<CSVRecord> fields = records(new TableFiles(MixedExample.season(), MixedExample.plan()).fields());
        assertThat(fields.stream().map(CSVRecord::toMap))
                .extracting(
                        "id", "work", "planted (ha)", "with extract (ha)", "without extract (ha)", "planters", "loads")
                .containsExactly(
                        tuple("N40", "planted in part without extract", "8", "5", "3", "P1", "L0001"),
                        tuple("S80", "sprayed", "4", "4", "0", "boom", "L0002"),
                        tuple("E20", "planted without extract", "2", "0", "2", "P1", ""));
    }

    @Test
    void aLoadIsPlantedOrSprayed() throws Exception {
        List<CSVRecord> loads = records(new TableFiles(MixedExample.season(), MixedExample.plan()).loads());
        assertThat(loads.stream().map(CSVRecord::toMap))
                .extracting("id", "planter", "work")
                .containsExactly(tuple("L0001", "P1", "planted"), tuple("L0002", "boom", "sprayed"));
    }

    @Test
    void whereAllIsPlantedWithExtractTablesDoNotSaySo() {
        assertThat(TABLES.fields() + TABLES.loads()).doesNotContain("extract", ",work");
    }

    @Test
    void whatIsLeftOfASeasonWithSprayersIsUnplantedOrUnsprayed() throws Exception {
        Plan none = ExamplePlan.withActivities(List.of());
        assertThat(records(new TableFiles(MixedExample.season(), none).fields()).stream()
                        .map(field -> field.get("work")))
                .containsExactly("unplanted", "unsprayed", "unplanted");
    }

    @Test
    void aLoadHasItsFillItsWaterAndItsMargin() throws Exception {
        // 1,600 L of which 150 L are concentrate; the last drop at 09:16 is 164 min before 12:00
        assertThat(records(TABLES.loads()).get(0).toMap())
                .containsAllEntriesOf(Map.of(
                        "id", "L0001",
                        "fill starts", "2027-04-20 07:00:00",
                        "at", "N40",
                        "load (L)", "1600",
                        "make-up water (L)", "1450",
                        "area (ha)", "8",
                        "batches", "B0001",
                        "margin (min)", "164"));
    }

    @Test
    void aBatchHasItsCompostByLot() throws Exception {
        assertThat(records(TABLES.batches()).get(0).toMap())
                .containsAllEntriesOf(Map.of(
                        "id", "B0001",
                        "at", "N40",
                        "compost (kg)", "16",
                        "lots (kg)", "windrow 10; bought 6",
                        "water (L)", "150",
                        "loads", "L0001",
                        "use by", "2027-04-20 12:00:00"));
    }

    @Test
    void figuresAreInTheUnitsOfTheSeasonWhichStandInTheHeader() throws Exception {
        // 8 ha = 19.768 ac, 1,600 L = 422.68 gal, 16 kg = 35.27 lb (NIST Handbook 44, appendix C)
        TableFiles tables = new TableFiles(ExampleSeason.season(), ExamplePlan.plan(DisplayUnits.US));
        assertThat(records(tables.fields()).get(0).get("area (ac)")).isEqualTo("19.768");
        assertThat(records(tables.loads()).get(0).get("load (gal)")).isEqualTo("422.68");
        assertThat(records(tables.batches()).get(0).get("compost (lb)")).isEqualTo("35.27");
    }

    @ParameterizedTest
    @MethodSource("hostileNames")
    void aNameStaysInItsCellAndIsNoFormula(String name) throws Exception {
        // RFC 4180, section 2; what begins a formula in a spreadsheet gets an apostrophe before it
        Plan plan = HostileNames.plan(name);
        List<CSVRecord> fields = records(new TableFiles(HostileNames.season(name), plan).fields());
        assertThat(fields).hasSize(3);
        String read = fields.get(0).get("name");
        assertThat(read)
                .isIn(name, "'" + name)
                .doesNotContainPattern("\\A[\\p{Z}\\s]*[=+\\-@\\t\\r\\n\\uff1d\\uff0b\\uff0d\\uff20]");
        assertThat(fields).allMatch(record -> record.size() == 16);
    }

    @Test
    void aFigureBelowZeroIsAFigure() throws Exception {
        assertThat(records(TABLES.fields()).get(1).get("days to spare")).isEqualTo("-1");
    }

    @Test
    void rowsEndWithCarriageReturnAndLineFeed() {
        assertThat(List.of(TABLES.fields(), TABLES.loads(), TABLES.batches())).allSatisfy(text -> {
            assertThat(text).startsWith("\ufeffid,").endsWith("\r\n");
            assertThat(text.replace("\r\n", "")).doesNotContain("\r", "\n");
        });
    }

    private static List<CSVRecord> records(String text) throws IOException {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (CSVParser parser = CSVParser.parse(new StringReader(text.substring(1)), format)) {
            return parser.getRecords();
        }
    }
}

package freshfurrow.model.read.schema;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import freshfurrow.model.read.Reading;
import freshfurrow.model.read.SeasonFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class SeasonSchemaTest {
    private static final Path ROOT = Path.of("..");
    private static final Path EXAMPLE = ROOT.resolve("scenarios/first-season");

    @TempDir
    private Path folder;

    static Stream<Path> scenarios() throws IOException {
        try (Stream<Path> found = Files.walk(ROOT.resolve("scenarios"))) {
            return found.filter(path -> path.endsWith("season.yaml")).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    void everyScenarioIsRightBySchemaAndReader(Path season) throws IOException {
        assertThat(faults(season)).isEmpty();
        assertThat(SeasonFiles.read(season, List.of())).isInstanceOf(Reading.Valid.class);
    }

    @Test
    void theExampleIsRightBeforeItIsBroken() throws IOException {
        Path season = broken("nothing", "nothing");

        assertThat(faults(season)).isEmpty();
        assertThat(SeasonFiles.read(season, List.of())).isInstanceOf(Reading.Valid.class);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '\0', textBlock = """
            tank: 600 gal | tank: 600
            tank: 600 gal | tank: 600 lb
            tank: 600 gal | tank: -600 gal
            tank: 600 gal | tank: lots
            tank: 600 gal | tonk: 600 gal
            tank: 600 gal, |
            mix: 20 gal/ac | mix: 20 gal
            hold: 5 h | hold: 5 ac
            fieldEfficiency: 0.65 | fieldEfficiency: 1.65
            fieldEfficiency: 0.65 | fieldEfficiency: 0
            fieldEfficiency: 0.65 | fieldEfficiency: good
            extractAt: field | extractAt: road
            hoses: 1 | hoses: 0
            hoses: 1 | hoses: 1.5
            lat: 41.000 | lat: 91
            lon: -97.000 | lon: -197
            first: 2027-04-19 | first: 19.4.2027
            first: 2027-04-19, |
            window: 2027-04-22/2027-05-08 | window: 2027-04-22
            closed: [SUNDAY] | closed: [7]
            hours: ["07:00/12:00", "12:30/20:00"] | hours: ["7 to 12"]
            hours: ["07:00/12:00", "12:30/20:00"] | hours: ["25:00/26:00"]
            from: "14:00" | from: "2 pm"
            amount: 0.8 in | amount: 0.8 d
            well: 1 d/in | well: 1 in
            fields: fields.csv | fields: fields.txt
            fields: fields.csv | fields: {}
            standard: {mix | "bad id": {mix
            windrow: {mass: 1400 lb, from: 2027-04-01} | windrow: {from: 2027-04-01}
            recipes: | recipies:
            """)
    void whatTheSchemaRefusesTheReaderRefuses(String right, String wrong) throws IOException {
        Path season = broken(right, wrong == null ? "" : wrong);

        assertThat(faults(season)).as("schema").isNotEmpty();
        assertThat(SeasonFiles.read(season, List.of())).as("reader").isInstanceOf(Reading.Invalid.class);
    }

    @Test
    void theDocumentNamesEveryKeyOfTheSchema() throws IOException {
        String document = Files.readString(ROOT.resolve("docs/season-file.md"));
        Set<String> keys = new TreeSet<>();
        collectKeys(schemaTree(), keys);

        assertThat(keys).isNotEmpty().allSatisfy(key -> assertThat(document).contains(key));
    }

    private Path broken(String right, String wrong) throws IOException {
        String text = Files.readString(EXAMPLE.resolve("season.yaml"));
        if (!right.equals("nothing")) {
            assertThat(text).contains(right);
        }
        Files.copy(EXAMPLE.resolve("fields.csv"), folder.resolve("fields.csv"));
        return Files.writeString(folder.resolve("season.yaml"), text.replace(right, wrong));
    }

    private static List<String> faults(Path season) throws IOException {
        JsonSchema schema =
                JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(schemaTree());
        JsonNode tree = new YAMLMapper().readTree(season.toFile());
        return schema.validate(tree).stream().map(ValidationMessage::getMessage).toList();
    }

    private static JsonNode schemaTree() throws IOException {
        return new ObjectMapper()
                .readTree(ROOT.resolve("docs/season.schema.json").toFile());
    }

    private static void collectKeys(JsonNode node, Set<String> keys) {
        JsonNode properties = node.path("properties");
        List<String> names = new ArrayList<>();
        properties.fieldNames().forEachRemaining(names::add);
        keys.addAll(names);
        node.forEach(child -> collectKeys(child, keys));
    }
}

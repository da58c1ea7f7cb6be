package freshfurrow.model.read;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SpecVersion.VersionFlag;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.io.UncheckedIOException;
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
import org.junit.jupiter.params.provider.ValueSource;

/** The JSON Schema of the season file (JSON Schema 2020-12) and the reader agree, as judged by a validator of the standard. */
final class SchemaTest {
    private static final Path SCHEMA = Path.of("../docs/season.schema.json");
    private static final Path PAGE = Path.of("../docs/season-file.md");
    private static final Path SCENARIOS = Path.of("../scenarios");
    private static final JsonSchemaFactory FACTORY = JsonSchemaFactory.getInstance(VersionFlag.V202012);

    @TempDir
    private Path folder = Path.of("");

    @Test
    void theSchemaIsASchemaOf202012() throws IOException {
        JsonSchema metaSchema = FACTORY.getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertThat(metaSchema.validate(schemaTree())).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("scenarioSeasons")
    void bothAcceptEveryScenario(Path season) {
        assertThat(WrittenSeason.problems(SeasonFiles.read(season, List.of()))).isEmpty();
        assertThat(broken(Json.tree(season))).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("scenarioVariants")
    void bothAcceptEveryScenarioWithItsVariants(Path variant) {
        Path season = variant.resolveSibling("season.yaml");
        assertThat(WrittenSeason.problems(SeasonFiles.read(season, List.of(variant))))
                .isEmpty();
        assertThat(broken(merged(Json.tree(season), Json.tree(variant)))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = '|', textBlock = """
                    hold: 5 h          | hold: 300 min
                    tank: 600 gal      | tank: 2271L
                    mix: 20 gal/ac     | mix: 75 L/ac
                    compost: 2 lb/ac   | compost: 0.9 kg/ac
                    tank: 600 gal      | tank: "  +6.e2   gal "
                    hoses: 1           | hoses: "2"
                    lat: 41.02         | lat: "41.02"
                    lateWeight: 1.0    | lateWeight: 0
                    extractAt: field   | extractAt: Water
                    payload: 12000 lb  | bucket: 30 lb
                    payload: 12000 lb  | compostLoad: 600 lb
                    payload: 12000 lb  | compostLoading: 0.05 min/lb
                    payload: 12000 lb  | emptyWeight: 1000 lb
                    from: 2027-04-01   | `from: 2027-04-01, at: yard`
                    refill: 30 min     | `refill: 30 min, compostTrip: 20 min`
                    payload: 12000 lb  | setUp: 20 min
                    payload: 12000 lb  | closeUp: 0.5 h
                    fillSetup: 6 min   | fillSetup: 6 min\\n    flush: 10 min
                    crop: corn}\\n  S80 | crop: corn, drainage: POOR}\\n  S80
                    crop: corn}\\n  S80 | crop: corn, planters: P1}\\n  S80
                    crop: corn}\\n  S80 | crop: corn, planters: [P1]}\\n  S80
                    closed: [SUNDAY, 2027-05-31] | closed: sunday
                    closed: [SUNDAY, 2027-05-31] | closed: []
                    `from: "14:00"`    | `from: 14:00`
                    `rigs:`            | `sprayers:\\n  H1: {rate: 2 ac/h, tank: 300 gal, roadSpeed: 15 mph, fillSetup: 6 min, moveTime: 12 min, at: yard, sprayHours: "07:00/10:00"}\\nrigs:`
                    `rigs:`            | `sprayers:\\n  S1: {width: 30 ft, speed: 2 m/s, fieldEfficiency: 0.6, tank: 300 gal, roadSpeed: 15 mph, fillSetup: 6 min, moveTime: 0 s, leastFill: 0, flush: 5 min, hours: "07:00/10:00", at: yard}\\nrigs:`
                    `rigs:`            | `sprayers:\\n  H1: {rate: 2 ac/h, on: R1, fillSetup: 6 min, moveTime: 12 min, sprayHours: "07:00/10:00"}\\nrigs:`
                    crop: corn}\\n  S80 | crop: corn, work: Plant}\\n  S80
                    `["07:00/12:00", "12:30/20:00"]` | `07:00/24:00`
                    `["07:00/12:00", "12:30/20:00"]` | `["07:00:30 / 12:00"]`
                    North forty        | 1984
                    name: Example      | `name: Example, clock: 24h`
                    name: Example      | `name: Example, clock: 12H`
                    `roadFactor: 1.3`  | ``
                    goals: {           | `costs: {currency: USD, labour: 24 /h, fuelRoad: 0.60 /mi, late: 4 /ac/d, yearly: {R1: 5200}}\\ngoals: {`
                    """)
    void bothAcceptOtherWaysOfWriting(String before, String after) {
        WrittenSeason season = changed(before, after);
        assertThat(season.problems()).isEmpty();
        assertThat(broken(Json.tree(folder.resolve("season.yaml")))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = '|', textBlock = """
                    tank: 600 gal      | tank: 600
                    tank: 600 gal      | tank: 600 ac
                    tank: 600 gal      | tank: -600 gal
                    tank: 600 gal      | tank: 1_000 gal
                    tank: 600 gal      | tank: [600 gal]
                    tank: 600 gal      | tonk: 600 gal
                    mix: 20 gal/ac     | mix: 20 gal
                    hold: 5 h          | hold: five hours
                    fieldEfficiency: 0.65 | fieldEfficiency: 65
                    fieldEfficiency: 0.65 | fieldEfficiency: 65 %
                    fieldEfficiency: 0.65 | fieldEfficiency: 0
                    `rigs:`            | `sprayers:\\n  H1: {rate: 2 ac, tank: 300 gal, roadSpeed: 15 mph, fillSetup: 6 min, moveTime: 12 min, at: yard}\\nrigs:`
                    `rigs:`            | `sprayers:\\n  H1: {rate: 2 ac/h, width: 3 ft, tank: 300 gal, roadSpeed: 15 mph, fillSetup: 6 min, moveTime: 12 min, at: yard}\\nrigs:`
                    `rigs:`            | `sprayers:\\n  H1: {speed: 2 mph, width: 3 ft, tank: 300 gal, roadSpeed: 15 mph, fillSetup: 6 min, moveTime: 12 min, at: yard}\\nrigs:`
                    `rigs:`            | `sprayers:\\n  H1: {tank: 300 gal, roadSpeed: 15 mph, fillSetup: 6 min, moveTime: 12 min, at: yard}\\nrigs:`
                    `rigs:`            | `sprayers:\\n  H1: {rate: 2 ac/h, on: R1, fillSetup: 6 min, moveTime: 12 min, tank: 300 gal}\\nrigs:`
                    `rigs:`            | `sprayers:\\n  H1: {rate: 2 ac/h, fillSetup: 6 min, moveTime: 12 min}\\nrigs:`
                    crop: corn}\\n  S80 | crop: corn, work: mow}\\n  S80
                    hoses: 1           | hoses: 1.5
                    hoses: 1           | hoses: 0
                    hoses: 1           | hoses: "101"
                    lat: 41.02         | lat: 141.02
                    lon: -97.02        | lon: west
                    roadFactor: 1.3    | roadFactor: 0.9
                    lateWeight: 1.0    | lateWeight: -1
                    refill: 30 min     | refill: 30
                    refill: 30 min     | refil: 30 min
                    well: 1 d/in       | well: 1 d
                    amount: 0.8 in     | amount: -0.8 in
                    `from: "14:00"`    | from: 2 pm
                    `from: "14:00"`    | from: 24:00
                    `from: "14:00"`    | `from: "14:00:00.5"`
                    date: 2027-05-03   | date: 3 May 2027
                    first: 2027-04-19  | first: 2027-13-19
                    first: 2027-04-19  | first: 1927-04-19
                    name: Example,     | ``
                    name: Example      | name: ""
                    name: Example      | `name: Example, clock: 12`
                    name: Example      | `name: Example, clock: 12 hours`
                    last: 2027-06-05,  | ``
                    window: 2027-04-20/2027-05-12 | window: 2027-04-20
                    window: 2027-04-20/2027-05-12 | window: 2027-04-20/2027-05-32
                    "12:30/20:00"      | "12:30/25:00"
                    "12:30/20:00"      | "12:30-20:00"
                    `["07:00/12:00", "12:30/20:00"]` | []
                    SUNDAY             | SUNDAI
                    extractAt: field   | extractAt: barn
                    crop: corn}\\n  S80 | crop: corn, drainage: swampy}\\n  S80
                    crop: corn}\\n  S80 | crop: corn, planters: []}\\n  S80
                    crop: corn}\\n  S80 | crop: corn, colour: red}\\n  S80
                    lon: -97.0, crop: corn} | lon: -97.0}
                    drum: 40 gal       | ``
                    payload: 12000 lb  | bucket: 5 gal
                    payload: 12000 lb  | buckets: 30 lb
                    payload: 12000 lb  | compostLoad: 600 gal
                    payload: 12000 lb  | compostLoading: 3 min
                    from: 2027-04-01   | `from: 2027-04-01, at: [yard]`
                    `flow: 40 gal/min, ` | ``
                    `mass: 4000 lb, `  | ``
                    R1:                | R 1:
                    N40: {name         | -N40: {name
                    windrow: {         | `"": {`
                    goals: {           | gaols: {
                    goals: {           | `costs: {labour: 24}\\ngoals: {`
                    goals: {           | `costs: {labor: 24 /h}\\ngoals: {`
                    goals: {           | `costs: {yearly: {R1: 5200 USD}}\\ngoals: {`
                    rain:\\n  -        | rain:\\n
                    goals: {           | `weather: {year: 2019}\\ngoals: {`
                    goals: {           | `weather: {file: s.csv, year: 19}\\ngoals: {`
                    goals: {           | `weather: {file: s.csv, rainedOff: 3}\\ngoals: {`
                    goals: {           | `weather: {file: s.csv, poor: {drains: 4}}\\ngoals: {`
                    goals: {           | `weather: {file: s.csv, poor: {workableBelow: 90 %}}\\ngoals: {`
                    North forty        | "North\\u0007"
                    """)
    void bothRefuseWhatASchemaCanSee(String before, String after) {
        WrittenSeason season = changed(before, after);
        assertThat(season.problems()).isNotEmpty();
        assertThat(broken(Json.tree(folder.resolve("season.yaml")))).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"season", "hours", "recipes", "fields", "planters", "rigs", "waterPoints", "compost"})
    void bothRefuseASeasonWithoutWhatItNeeds(String key) {
        String text = WrittenSeason.RIGHT.replaceAll("(?m)^" + key + ":.*\\n(?:[ ].*\\n)*", "");
        assertThat(new WrittenSeason(folder, text).problems()).isNotEmpty();
        assertThat(broken(Json.tree(folder.resolve("season.yaml")))).isNotEmpty();
    }

    /** The reader names all keys that it knows when it meets one that it does not. */
    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = '|', textBlock = """
                    season: {          | season: {qqqqqqqq: 1,      | /properties/season
                    yard: {            | yard: {qqqqqqqq: 1,        | /$defs/place
                    standard: {        | standard: {qqqqqqqq: 1,    | /$defs/recipe
                    corn: {            | corn: {qqqqqqqq: 1,        | /$defs/crop
                    N40: {             | N40: {qqqqqqqq: 1,         | /$defs/field
                    P1:                | P1:\\n    qqqqqqqq: 1      | /$defs/planter
                    `rigs:`            | `sprayers:\\n  H1: {qqqqqqqq: 1, rate: 2 ac/h, tank: 300 gal, roadSpeed: 15 mph, fillSetup: 6 min, moveTime: 12 min, at: yard}\\nrigs:` | /$defs/sprayer
                    R1:                | R1:\\n    qqqqqqqq: 1      | /$defs/rig
                    well: {            | well: {qqqqqqqq: 1,        | /$defs/waterPoint
                    windrow: {         | windrow: {qqqqqqqq: 1,     | /$defs/lot
                    travel: {          | travel: {qqqqqqqq: 1,      | /properties/travel
                    drying: {          | drying: {qqqqqqqq: 1,      | /properties/drying
                    goals: {           | `weather: {qqqqqqqq: 1, file: s.csv}\\ngoals: {` | /properties/weather
                    goals: {           | `weather: {well: {qqqqqqqq: 1}, file: s.csv}\\ngoals: {` | /$defs/ground
                    - {                | - {qqqqqqqq: 1,            | /properties/rain/items
                    goals: {           | goals: {qqqqqqqq: 1,       | /properties/goals
                    closed:            | qqqqqqqq: 1\\nclosed:      |
                    """)
    void bothKnowTheSameKeys(String before, String after, String pointer) throws IOException {
        List<String> problems = changed(before, after).problems();
        assertThat(problems).hasSize(1);
        String known = problems.get(0).substring(problems.get(0).indexOf("known here: ") + "known here: ".length());
        JsonNode object = schemaTree().at(pointer == null ? "" : pointer);
        List<String> keys = new ArrayList<>();
        object.get("properties").fieldNames().forEachRemaining(keys::add);
        assertThat(known.split(", ", -1)).containsExactlyInAnyOrderElementsOf(keys);
        assertThat(object.get("additionalProperties").asBoolean()).isFalse();
        object.get("properties")
                .forEach(property ->
                        assertThat(described(property)).as("%s", property).isTrue());
    }

    @Test
    void aTableOfFieldsHasAColumnForEveryKeyOfAField() {
        List<String> columns = new ArrayList<>(List.of("id"));
        schemaTree().at("/$defs/field/properties").fieldNames().forEachRemaining(columns::add);
        assertThat(FieldFiles.COLUMNS).containsExactlyInAnyOrderElementsOf(columns);
    }

    @Test
    void thePageAboutTheSeasonFileMentionsEveryKey() throws IOException {
        String page = Files.readString(PAGE);
        Set<String> keys = new TreeSet<>();
        for (JsonNode object : schemaTree().findParents("additionalProperties")) {
            if (object.has("properties")) {
                object.get("properties").fieldNames().forEachRemaining(keys::add);
            }
        }
        assertThat(keys).hasSizeGreaterThan(60);
        assertThat(keys).allSatisfy(key -> assertThat(page).contains("`" + key + "`"));
    }

    /** What the page shows is what a reader of it copies. */
    @Test
    void theExampleOfThePageIsARightSeason() throws IOException {
        String page = Files.readString(PAGE);
        String season = page.substring(page.indexOf("```yaml\nseason:") + "```yaml\n".length());
        String fields = page.substring(page.indexOf("```csv\n") + "```csv\n".length());
        String variant = page.substring(page.lastIndexOf("```yaml\n") + "```yaml\n".length());
        WrittenSeason example = new WrittenSeason(folder, season.substring(0, season.indexOf("```")))
                .withFile("fields.csv", fields.substring(0, fields.indexOf("```")))
                .withFile("two-rigs.yaml", variant.substring(0, variant.indexOf("```")));
        assertThat(example.problems()).isEmpty();
        assertThat(example.season("two-rigs.yaml").rigs()).hasSize(2);
        assertThat(broken(Json.tree(folder.resolve("season.yaml")))).isEmpty();
    }

    private static boolean described(JsonNode property) {
        return property.has("description") || property.has("$ref");
    }

    private WrittenSeason changed(String before, String after) {
        return WrittenSeason.in(folder)
                .with(before.replace("\\n", "\n"), after == null ? "" : after.replace("\\n", "\n"));
    }

    private static Set<ValidationMessage> broken(JsonNode season) {
        return FACTORY.getSchema(schemaTree()).validate(season);
    }

    private static JsonNode schemaTree() {
        try {
            return new ObjectMapper().readTree(SCHEMA.toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** RFC 7396, once more, over the validator's own tree. */
    private static JsonNode merged(JsonNode target, JsonNode patch) {
        if (!patch.isObject()) {
            return patch;
        }
        ObjectNode result = target.isObject() ? target.<ObjectNode>deepCopy() : new ObjectMapper().createObjectNode();
        patch.properties().forEach(change -> {
            if (change.getValue().isNull()) {
                result.remove(change.getKey());
            } else {
                result.set(change.getKey(), merged(result.path(change.getKey()), change.getValue()));
            }
        });
        return result;
    }

    static List<Path> scenarioSeasons() throws IOException {
        return files().filter(file -> file.endsWith("season.yaml")).toList();
    }

    static List<Path> scenarioVariants() throws IOException {
        return files().filter(file -> !file.endsWith("season.yaml")).toList();
    }

    private static Stream<Path> files() throws IOException {
        try (Stream<Path> files = Files.walk(SCENARIOS)) {
            return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList().stream();
        }
    }
}

package freshfurrow.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.app.begin.Answers;
import freshfurrow.app.begin.NewSeason;
import freshfurrow.app.begin.Surroundings;
import freshfurrow.app.shapefile.ShpBytes;
import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class BeginCommandTest {
    private static final Surroundings HERE = new Surroundings(LocalDate.of(2027, 3, 1), ZoneId.of("America/Chicago"));

    /** One field; all else is left to the defaults. */
    private static final String SHORTEST =
            "us\n".concat("\n".repeat(6)) + "41.0, -97.0\nNorth forty\n40\n41.02\n-97.01\ncorn\n\n";

    @TempDir
    private Path folder = Path.of("");

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... arguments) {
        return Freshfurrow.run(new PrintWriter(out), new PrintWriter(err), arguments);
    }

    private Optional<Answers> answers(String lines) {
        return new Questionnaire(new Prompts(new BufferedReader(new StringReader(lines)), new PrintWriter(out)), HERE)
                .answers();
    }

    @ParameterizedTest
    @ValueSource(strings = {"us", "metric", "US"})
    void anExampleIsASeasonThatIsAccepted(String units) {
        Path begun = folder.resolve("new");
        assertThat(run("begin", begun.toString(), "--units", units)).isZero();
        assertThat(out.toString()).contains("Written: " + begun.resolve("season.yaml"), "The season can be planned.");
        assertThat(run("check", begun.toString())).isZero();
        assertThat(err.toString()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"season.yaml", "fields.csv"})
    void whatIsThereIsNeverReplaced(String file) throws Exception {
        Files.writeString(folder.resolve(file), "mine");
        assertThat(run("begin", folder.toString(), "--units", "us")).isEqualTo(1);
        assertThat(err.toString())
                .contains(file + ": exists already, so nothing was written; begin a season in another folder");
        try (var files = Files.list(folder)) {
            assertThat(files).containsExactly(folder.resolve(file));
        }
        assertThat(folder.resolve(file)).hasContent("mine");
    }

    @Test
    void unknownUnitsAreACommandLineMistake() {
        assertThat(run("begin", folder.toString(), "--units", "imperial")).isEqualTo(2);
        assertThat(err.toString()).contains("'imperial' is not us or metric; write one of them");
    }

    @Test
    void enterTakesTheDefaultOfEveryQuestionThatHasOne() {
        NewSeason begun = NewSeason.of(answers(SHORTEST + "\n".repeat(40)).orElseThrow(), HERE);
        assertThat(begun.problems()).isEmpty();
        assertThat(begun.text()).contains("batchTime: 20 min  # default", "timezone: America/Chicago  # default");
        assertThat(out.toString())
                .contains(
                        "How long does a batch take you? (usual 10 to 30 min) [20 min] ",
                        "How fast does it plant? (usual 4 to 7 mph; ASABE D497, row-crop planters) [5 mph] ");
    }

    @Test
    void whatIsNotUnderstoodIsAskedAgainWithTheReason() {
        String lines = SHORTEST + "\n" + "soon\n0\n2 acres\n1,200 gal/ac\n20 gallons per acre\n" + "\n".repeat(40);
        NewSeason begun = NewSeason.of(answers(lines).orElseThrow(), HERE);
        assertThat(begun.text()).contains("    mix: 20 gal/ac\n");
        assertThat(out.toString())
                .contains(
                        "  'soon' is not a quantity; ",
                        "  0 gal/ac is out of range; use 0.02 to 1,000 gal/ac",
                        "acres is not a unit of a volume per area",
                        "  1200 gal/ac is out of range; ");
    }

    @Test
    void aPlaceIsTypedAsMapsGiveItToCopy() {
        String lines = SHORTEST.replace("41.0, -97.0\n", "by the creek\n41.0, -97.0\n")
                .replace("41.02\n-97.01\n", "41.02 N, 197.01 W\n41.02 N, 97.01 W\n");
        NewSeason begun = NewSeason.of(answers(lines + "\n".repeat(40)).orElseThrow(), HERE);
        assertThat(begun.problems()).isEmpty();
        assertThat(begun.fieldsText()).contains("North-forty,North forty,40,41.02,-97.01,corn");
        assertThat(out.toString())
                .contains("  'by the creek' is not a place; write latitude and longitude, like 41.02, -97.01")
                .contains("-197.01 is out of range");
    }

    @Test
    void aMapOfFieldsIsReadInByItsName() throws Exception {
        Path map = folder.resolve("farm.shp");
        Files.write(map, ShpBytes.polygons(List.of(List.of(ShpBytes.square(-97, 41, 0.005)))));
        Files.write(folder.resolve("farm.dbf"), ShpBytes.table(List.of("NAME"), List.of(List.of("North forty"))));
        String fields = SHORTEST.substring(SHORTEST.indexOf("North forty"));
        String lines = SHORTEST.replace(fields, folder.resolve("none.kml") + "\n" + map + "\n") + "\n".repeat(40);
        NewSeason begun = NewSeason.of(answers(lines).orElseThrow(), HERE);

        assertThat(begun.problems()).isEmpty();
        assertThat(begun.fieldsName()).isEqualTo("fields.geojson");
        assertThat(begun.fieldsText()).contains("North forty");
        assertThat(out.toString())
                .contains(
                        "none.kml: There is no such file.",
                        "  There is no .prj file with it: its coordinates look like degrees",
                        "  1 field taken from it. Areas and places come from the drawing.");
    }

    @Test
    void twoPlantersAreAskedAboutOneAfterTheOther() {
        String lines = SHORTEST + "\n".repeat(4) + "two\n2\n" + "\n40\n" + "\n".repeat(8) + "20 ft\n" + "\n".repeat(40);
        NewSeason begun = NewSeason.of(answers(lines).orElseThrow(), HERE);
        assertThat(begun.problems()).isEmpty();
        assertThat(begun.text())
                .contains("  P1:  # default\n    width: 40 ft\n", "  P2:  # default\n    width: 20 ft\n");
        assertThat(out.toString())
                .contains(
                        "  Write a figure from 1 to 20.",
                        "The planter 1 of 2:",
                        "What do you call this planter? [P1] ",
                        "What do you call this planter? [P2] ");
    }

    @Test
    void machinesAndLotsAreCalledAsTheirPeopleCallThem() {
        String planters = "2\nBig planter\n" + "\n".repeat(8) + "big-planter\nP9\n" + "\n".repeat(8);
        String rigs = "1\nP9\nRíg\n" + "\n".repeat(10);
        String rest = "1\nyard\nWell 2\n" + "\n".repeat(3) + "Халда\n" + "\n".repeat(2);
        NewSeason begun = NewSeason.of(
                answers(SHORTEST + "\n".repeat(4) + planters + rigs + rest).orElseThrow(), HERE);

        assertThat(begun.problems()).isEmpty();
        assertThat(begun.text())
                .contains(
                        "  Big-planter:  # Big planter\n",
                        "  P9:\n",
                        "  Rig:  # Ríg\n",
                        "  Well-2:  # Well 2\n",
                        "  windrow:  # Халда\n");
        assertThat(out.toString())
                .contains(
                        "  Plans and sheets call it Big-planter.",
                        "  the id big-planter is a planter's already; give every planter a name of its own",
                        "  the id P9 is a planter's already; give every rig a name of its own",
                        "  the id yard is the yard's already; give every water point a name of its own",
                        "What do you call this compost lot? [windrow] ");
    }

    @Test
    void aDefaultNameIsOneThatIsFree() {
        String machines = "1\nR1\n" + "\n".repeat(8) + "1\n";
        NewSeason begun = NewSeason.of(
                answers(SHORTEST + "\n".repeat(4) + machines + "\n".repeat(40)).orElseThrow(), HERE);

        assertThat(begun.problems()).isEmpty();
        assertThat(begun.text()).contains("  R1:\n", "  R2:  # default\n");
        assertThat(out.toString()).contains("What do you call this rig? [R2] ");
    }

    @Test
    void linesOfOtherSystemsAreAnswersToo() {
        NewSeason begun = NewSeason.of(
                answers(("\uFEFF" + SHORTEST + "\n".repeat(40)).replace("\n", "\r\n"))
                        .orElseThrow(),
                HERE);
        assertThat(begun.problems()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "us", "us\nMine\n", "us\n\n\n\n\n\n\n41,-97\nNorth forty\n40"})
    void endOfInputEndsWithoutAnAnswer(String lines) {
        assertThat(answers(lines)).isEmpty();
    }

    @Test
    void nothingInANameSteersTheTerminal() {
        String lines =
                SHORTEST.replace("us\n\n", "us\n\u001b[31mred\n").replace("corn", "\u001b[2Jcorn") + "\n".repeat(40);
        assertThat(answers(lines)).isPresent();
        assertThat(out.toString()).doesNotContain("\u001b");
    }
}

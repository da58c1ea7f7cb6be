package freshfurrow.model.read;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Merge patches over a season: what they change, and what they break. */
final class VariantsTest {
    private static final String SECOND_RIG = """
            rigs:
              R2: {drum: 80 gal, batchCompost: 60 lb, batchTime: 15 min, cleanTime: 3 min, nurseTank: 1200 gal,
                   transferRate: 60 gal/min, roadSpeed: 35 mph, at: yard}
            """;

    @TempDir
    private Path folder = Path.of("");

    @Test
    void aVariantAddsARig() {
        Season season =
                WrittenSeason.in(folder).withFile("two-rigs.yaml", SECOND_RIG).season("two-rigs.yaml");
        assertThat(season.rigs()).extracting(Rig::id).containsExactly("R1", "R2");
    }

    @Test
    void aLaterVariantTakesARigAway() {
        Season season = WrittenSeason.in(folder)
                .withFile("two-rigs.yaml", SECOND_RIG)
                .withFile("one-rig.json", "{\"rigs\": {\"R1\": null}}")
                .season("two-rigs.yaml", "one-rig.json");
        assertThat(season.rigs()).extracting(Rig::id).containsExactly("R2");
    }

    @Test
    void anEmptyValueTakesAwayAsANullDoes() {
        Season season = WrittenSeason.in(folder)
                .withFile("dry.yaml", "rain:\nwaterPoints: {well: {dailyLimit: }}\n")
                .season("dry.yaml");
        assertThat(season.rain()).isEmpty();
        assertThat(season.waterPoints().get(0).dailyLimitL()).isEmpty();
    }

    @Test
    void aVariantChangesOneFigureAndKeepsTheRest() {
        Season season = WrittenSeason.in(folder)
                .withFile("slow.yaml", "planters: {P1: {speed: 4 mph}}")
                .season("slow.yaml");
        assertThat(season.planters().get(0).speedMPerS()).isEqualTo(4 * 1609.344 / 3600);
        assertThat(season.applicators().get(0).tankL()).isEqualTo(2271.2470704);
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = '|', textBlock = """
                    `planters: {P1: {tank: 299 gal}}` | v.yaml:1: planters.P1.tank: holds 299 gal, less than the 300 gal of mix that one batch of R1 makes by recipe standard; use a larger tank or less compost per batch
                    `planters: {P1: {tank: 600}}`     | v.yaml:1: planters.P1.tank: 600 has no unit; write a volume like 600 gal
                    `planters: {P1: {tnak: 600 gal}}` | v.yaml:1: planters.P1.tnak: is not a known key; did you mean tank?
                    `planters: {P1: {tank: null}}`    | v.yaml:1: planters.P1.tank: is missing; write a volume like tank: 600 gal
                    `rigs: {R1: null}`                | v.yaml:1: rigs: is empty; write at least one rig
                    `rigs: null`                      | v.yaml:1: rigs: is missing; write at least one rig
                    `fields: {N40: null, S80: null}`  | v.yaml:1: fields: there is no field; write at least one field
                    `recipes: {standard: {hold: 0 h}}`| v.yaml:1: recipes.standard.hold: 0 h is out of range; use 1 min to 7 d
                    `[rigs]`                          | v.yaml:1: is a list where a map of changes belongs; write key: value pairs
                    `two rigs`                        | v.yaml:1: is 'two rigs' where a map of changes belongs; write key: value pairs
                    ``                                | v.yaml: is empty; write key: value pairs into it
                    `rigs: &a {}`                     | v.yaml:1: rigs: uses a YAML anchor or alias; write the value out where it is used
                    """)
    void aProblemOfAVariantNamesItsFile(String variant, String line) {
        assertThat(WrittenSeason.in(folder).withFile("v.yaml", variant).problems("v.yaml"))
                .containsExactly(line);
    }

    @Test
    void aPlaceThatAVariantTookAwayIsMissedWhereItIsNamed() {
        assertThat(WrittenSeason.in(folder)
                        .withFile("moved.yaml", "places: {yard: null, homestead: {lat: 41, lon: -97}}")
                        .problems("moved.yaml"))
                .containsExactly(
                        "season.yaml:23: planters.P1.at: there is no place yard; known are homestead, well, N40, S80",
                        "season.yaml:35: rigs.R1.at: there is no place yard; known are homestead, well, N40, S80");
    }

    @Test
    void aVariantNamedLikeTheSeasonIsToldApartByItsPath() throws IOException {
        Files.createDirectory(folder.resolve("wet"));
        WrittenSeason season = WrittenSeason.in(folder).withFile("wet/season.yaml", "planters: {P1: {tank: 600}}");
        assertThat(season.problems("wet/season.yaml"))
                .containsExactly(folder.resolve("wet/season.yaml")
                        + ":1: planters.P1.tank: 600 has no unit; write a volume like 600 gal");
    }

    @Test
    void problemsOfTheSeasonComeBeforeThoseOfItsVariants() {
        assertThat(WrittenSeason.in(folder)
                        .with("batchTime: 15 min", "batchTime: 15")
                        .withFile("a.yaml", "planters: {P1: {tank: 600}}")
                        .problems("a.yaml"))
                .containsExactly(
                        "season.yaml:28: rigs.R1.batchTime: 15 has no unit; write a time like 20 min",
                        "a.yaml:1: planters.P1.tank: 600 has no unit; write a volume like 600 gal");
    }

    @Test
    void aVariantThatIsNotThereIsOneLine() {
        assertThat(WrittenSeason.in(folder).problems("none.yaml"))
                .containsExactly("none.yaml: does not exist; check the name and the folder");
    }
}

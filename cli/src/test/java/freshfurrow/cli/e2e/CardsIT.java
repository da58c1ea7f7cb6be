package freshfurrow.cli.e2e;

import static freshfurrow.cli.e2e.MistakesIT.assertNoTrace;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cards for the drum and the planter, from the command line. */
final class CardsIT {
    @TempDir
    private Path folder = Path.of("");

    private String season = "";

    @BeforeEach
    void writeSeason() throws Exception {
        season = SeasonOnDisk.in(folder).toString();
    }

    private Launcher.Result run(String command, String options) throws Exception {
        List<String> words = new ArrayList<>(List.of(command, season));
        if (!options.isEmpty()) {
            words.addAll(List.of(options.split("\\|", -1)));
        }
        return InProcess.run(words.toArray(String[]::new));
    }

    /** What the card says, with one blank between words. */
    private String card(String command, String options) throws Exception {
        return run(command, options).out().replaceAll(" +", " ");
    }

    /** Common practice, no source: 300 gal of mix take 30 lb in 40 gal of drum water, 1 part to 6.5, in 15 min. */
    @Test
    void aBatchOfTheTradeIsMixed() throws Exception {
        Launcher.Result mix = run("mix", "--tank|300 gal|--start|07:00");

        assertThat(mix.exitCode()).isZero();
        assertThat(mix.err()).isEmpty();
        assertThat(mix.out().replaceAll(" +", " "))
                .contains("One load for 15 ac (what 300 gal of mix is enough for)", "Compost 30 lb =", "Batches 1 =")
                .contains("Buckets 1 full (30 lb a bucket", "Concentrate 40 gal =", "Make-up water 260 gal =")
                .contains("Dilution 1 to 6.5 1 part concentrate to 6.5 parts water (40 gal + 260 gal)")
                .contains("Last batch done 07:15 =", "USE BY 12:15 =");
    }

    @Test
    void anAreaMayBeInTheSeasonsUnitInAcresOrInItsOwn() throws Exception {
        assertThat(card("mix", "--area|28")).contains("One load for 28 ac (as asked for)");
        assertThat(card("mix", "--acres|28")).contains("One load for 28 ac (as asked for)");
        assertThat(card("mix", "--area|10 ha")).contains("One load for 24.71 ac (as asked for)");
        assertThat(card("mix", "")).contains("One load for 30 ac (the largest load for P1, by tanks and hold time)");
    }

    @Test
    void aLoadThatDoesNotFitTheTankIsRefused() throws Exception {
        Launcher.Result result = run("mix", "--acres|42");

        assertThat(result.exitCode()).isEqualTo(1);
        assertThat(result.out()).isEmpty();
        assertThat(result.err())
                .isEqualTo(
                        "Does not fit: a load for 42 ac is 840 gal of mix, but P1's tank holds 600 gal; make 2 loads, each for 30 ac or less\n");
    }

    /** Common practice, no source: about 6 million a square foot at 2 lb/ac; 2.9e8 a gram delivered. */
    @Test
    void aLabCountComesOutPerSquareFoot() throws Exception {
        assertThat(card("mix", "--count|3.6e8|--extraction-share|0.8"))
                .contains("Delivered 2.88e8 a gram =", "Per square foot 6.00e6 =");
    }

    /** GPM = GPA x MPH x W / 5,940: 20 x 5 x 30 / 5,940 = 0.5051; 64.65 fl oz a minute; 30 in: 136 ft (AEX-520). */
    @Test
    void aPlanterIsCalibrated() throws Exception {
        Launcher.Result calibrated = run("calibrate", "--planter|P1|--jar-time|1min");

        assertThat(calibrated.exitCode()).isZero();
        assertThat(calibrated.err()).isEmpty();
        assertThat(calibrated.out().replaceAll(" +", " "))
                .contains("Each row 0.5051 gal/min =", "All rows 8.081 gal/min =", "Jar, 1 min 64.65 fl oz =")
                .contains("1/128 acre 136.1 ft =", "catch there 20 fl oz ounces caught = gallons per acre");
    }

    /** Square-root law: 40 psi at 20 gal/ac are 22.5 psi at 15. */
    @Test
    void anotherRateTakesAnotherPressure() throws Exception {
        assertThat(card("calibrate", "--pressure|40 psi|--rate|15 gal/ac")).contains("For 15 gal/ac 22.5 psi =");
    }

    /** University of Florida: 26 fl oz in 300 ft from one outlet are 29.5 gal/ac at 12 in, so at 30 in 12/30 of that. */
    @Test
    void aCatchOverADistanceGivesTheRate() throws Exception {
        assertThat(card("calibrate", "--caught|26 fl oz|--over|300 ft")).contains("Rate 11.8 gal/ac =");
    }

    @ParameterizedTest
    @CsvSource(
            delimiterString = " ; ",
            value = {
                "mix ; --area|0 ac ; --area '0 ac' must be above 0; write an area like 40 ac or 16 ha",
                "mix ; --area|42 gal ; --area '42 gal': gal is not a unit of an area; use one of ac, ha, m2, like 40 ac or 16 ha",
                "mix ; --tank|much ; --tank 'much' is not a quantity; write a volume like 600 gal or 2300 L",
                "mix ; --acres|1e9 ; --acres '1e9' is out of range; a load is for 0.01 ha (0.025 ac) to 100,000 ha",
                "mix ; --area|1 ac|--tank|9 gal ; --area, --acres and --tank cannot be used together; give one of them",
                "mix ; --recipe|tea ; --recipe: the season has no recipe tea; it has standard",
                "mix ; --count|1e8 ; --count and --extraction-share must be used together; write them like --count 3.6e8 --extraction-share 0.8",
                "mix ; --count|1e8|--extraction-share|2 ; an extraction share is more than 0, up to 1, not 2.0; write them like --count 3.6e8 --extraction-share 0.8",
                "mix ; --count|many|--extraction-share|1 ; --count 'many' is not a number; write them like --count 3.6e8 --extraction-share 0.8",
                "calibrate ; --planter|P9 ; --planter: the season has no planter P9; it has P1",
                "calibrate ; --rate|15 gal/ac ; --rate needs the pressure now; give it with --pressure, like --pressure '40 psi'",
                "calibrate ; --pressure|40 psi ; --pressure is used with --rate or --caught; give one of them",
                "calibrate ; --over|100 ft ; --over is the distance of a catch; give what was caught with --caught",
                "calibrate ; --caught|0,0 ; --caught '0,0' must be 0 or more for each outlet, and above 0 for at least one",
                "calibrate ; --caught|1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1 ; --caught has 17 catches, but P1 has 16 rows"
            },
            quoteCharacter = '`')
    void whatMakesNoCardIsOneLineAndExitCodeOne(String command, String options, String line) throws Exception {
        Launcher.Result result = run(command, options);

        assertThat(result.exitCode()).isEqualTo(1);
        assertThat(result.out()).isEmpty();
        assertThat(result.err()).isEqualTo(line + "\n");
        assertNoTrace(result);
    }

    /** In 40 gal of drum water 30 lb are 0.75 lb/gal; a recipe of 20 lb in 20 gal is 1 lb/gal. */
    @Test
    void aRecipeThatTheDrumIsTooWeakForIsRefused() throws Exception {
        withAStrongRecipe();

        Launcher.Result result = run("mix", "--recipe|strong");

        assertThat(result.exitCode()).isEqualTo(1);
        assertThat(result.out()).isEmpty();
        assertThat(result.err())
                .isEqualTo(
                        "R1 cannot make strong: its concentrate has 30 lb / 40 gal = 0.75 lb/gal, but the mix needs 20 lb/ac"
                                + " / 20 gal/ac = 1 lb/gal; put at least 40 lb of compost in a batch, or at most 30 gal of water in"
                                + " the drum\n");
    }

    @Test
    void ofSeveralRecipesOneIsToBeChosen() throws Exception {
        withAStrongRecipe();

        Launcher.Result result = run("calibrate", "");

        assertThat(result.exitCode()).isEqualTo(1);
        assertThat(result.out()).isEmpty();
        assertThat(result.err()).isEqualTo("The season has 2 recipes: standard, strong; choose one with --recipe\n");
        assertThat(card("calibrate", "--recipe|standard")).contains("Each row 0.5051 gal/min =");
    }

    private void withAStrongRecipe() throws Exception {
        Path file = folder.resolve("season.yaml");
        Files.writeString(
                file,
                Files.readString(file)
                        .replace("corn: {", "corn: {recipe: standard, ")
                        .replace("crops:", "  strong: {mix: 20 gal/ac, compost: 20 lb/ac, hold: 5 h}\ncrops:"));
    }
}

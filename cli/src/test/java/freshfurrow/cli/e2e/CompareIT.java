package freshfurrow.cli.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class CompareIT {
    private static final String SEASON = Launcher.scenario("weather-spring");
    private static final String TWO_RIGS = SEASON + "/two-rigs.yaml";

    @TempDir
    private Path folder = Path.of("");

    @Test
    void slicesMergedAreTheSameFileAsOneRunWhateverTheThreads() throws Exception {
        compare("1-4", "2", "one");
        compare("5-8", "1", "two");
        compare("8", "1", "all");
        Launcher.Result merged =
                InProcess.run("compare", "--merge", at("two"), at("one") + "/compare.json", "--out", at("merged"));

        assertThat(merged.exitCode()).as(merged.all()).isZero();
        assertThat(text("merged/compare.json")).isEqualTo(text("all/compare.json"));
        assertThat(text("merged/compare.html")).isEqualTo(text("all/compare.html"));
    }

    @Test
    void theFileHasARowForEachSpringAndTheTextSaysWhatItMeans() throws Exception {
        Launcher.Result run = compare("6", "2", "six");

        assertThat(run.out())
                .contains(
                        "6 springs, 6 recorded and 0 generated",
                        "two-rigs minus base",
                        "With two-rigs, on average ",
                        "cost per season",
                        " a season more to run (95 % interval ",
                        "would shrink by ");
        JsonNode file = new ObjectMapper().readTree(text("six/compare.json"));
        assertThat(file.at("/format").asText()).isEqualTo("freshfurrow-compare/1");
        assertThat(file.at("/variants/0/rows").size()).isEqualTo(6);
        assertThat(file.at("/variants/1/lessBase/waitH/mean").asDouble()).isNegative();
        assertThat(file.at("/variants/1/money/yearlyExtra").asDouble()).isEqualTo(5_500);
    }

    @Test
    void aComparisonThatIsThereIsNotReplacedUnasked() throws Exception {
        Files.createDirectories(folder.resolve("there"));
        Files.writeString(folder.resolve("there/compare.json"), "mine");

        Launcher.Result run = InProcess.run("compare", SEASON, "--springs", "2", "--out", at("there"));

        assertThat(run.exitCode()).isEqualTo(1);
        assertThat(run.err()).contains("exists already", "--force");
        assertThat(text("there/compare.json")).isEqualTo("mine");
    }

    @Test
    void aSeasonWithoutAWeatherRecordIsRefusedWithARemedy() throws Exception {
        for (String command : new String[] {"compare", "supply"}) {
            Launcher.Result run = InProcess.run(command, Launcher.scenario("first-season"));
            assertThat(run.exitCode()).isEqualTo(1);
            assertThat(run.err().lines()).singleElement().asString().contains("names no weather record", "station.csv");
        }
    }

    @Test
    void aFileThatIsNoComparisonIsRefused() throws Exception {
        Files.writeString(folder.resolve("compare.json"), "{\"format\": \"other/1\"}");

        Launcher.Result run = InProcess.run("compare", "--merge", folder.toString(), "--out", at("merged"));

        assertThat(run.exitCode()).isEqualTo(1);
        assertThat(run.err()).contains("compare.json: is not a comparison that can be read", "other/1");
    }

    @Test
    void seasonAndMergeTogetherMakeNoSense() throws Exception {
        assertThat(InProcess.run("compare").exitCode()).isEqualTo(2);
        assertThat(InProcess.run("compare", SEASON, "--springs", "9-3").exitCode())
                .isEqualTo(2);
        assertThat(InProcess.run("supply", SEASON, "--sure", "120%").exitCode()).isEqualTo(2);
    }

    @Test
    void supplySaysWhatToHaveByWhenAndWhenToOrderIt() throws Exception {
        Launcher.Result run =
                InProcess.run("supply", SEASON, "--springs", "6", "--steps", "400", "--sure", "80%", "--lead", "14");

        assertThat(run.exitCode()).as(run.all()).isZero();
        assertThat(run.out())
                .contains(
                        "amounts that are enough in 8 springs out of 10: 6 springs",
                        "needed by",
                        "order by",
                        "delivery",
                        "heaviest day");
    }

    private Launcher.Result compare(String springs, String threads, String out) throws Exception {
        Launcher.Result run = InProcess.run(
                "compare",
                SEASON,
                "--variant",
                TWO_RIGS,
                "--springs",
                springs,
                "--steps",
                "800",
                "--threads",
                threads,
                "--out",
                at(out));
        assertThat(run.exitCode()).as(run.all()).isZero();
        return run;
    }

    private String at(String name) {
        return folder.resolve(name).toString();
    }

    private String text(String name) throws IOException {
        return Files.readString(folder.resolve(name));
    }
}

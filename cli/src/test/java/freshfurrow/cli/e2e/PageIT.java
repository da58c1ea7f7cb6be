package freshfurrow.cli.e2e;

import static freshfurrow.cli.e2e.MistakesIT.assertNoTrace;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page beside a plan, and one made again from a plan. */
final class PageIT {
    @TempDir
    private Path folder = Path.of("");

    private String season = "";
    private String planned = "";
    private Path page = Path.of("");

    @BeforeEach
    void plan() throws Exception {
        season = SeasonOnDisk.in(folder).toString();
        Path plan = folder.resolve("plan");
        planned = plan.toString();
        page = plan.resolve("plan.html");
        assertThat(InProcess.run("plan", season, "--steps", "0").out()).contains("with plan.html beside it");
    }

    @Test
    void aPlanComesWithItsPageAndThePageCanBeMadeAgain() throws Exception {
        String first = Files.readString(page);
        assertThat(first).startsWith("<!doctype html>").contains("Test farm");
        Files.delete(page);
        Launcher.Result again = InProcess.run("page", planned);
        assertThat(again.exitCode()).isZero();
        assertThat(again.err()).isEmpty();
        assertThat(again.out()).contains("Written to " + page);
        assertThat(page).hasContent(first);
    }

    @Test
    void aPageThatIsThereIsReplacedOnlyWhenForced() throws Exception {
        Files.writeString(page, "mine");
        Launcher.Result refused = InProcess.run("page", planned);
        assertThat(refused.exitCode()).isEqualTo(1);
        assertThat(refused.err()).contains("plan.html", "--force", "--out").hasLineCount(1);
        assertThat(page).hasContent("mine");
        assertThat(InProcess.run("page", planned, "--force").exitCode()).isZero();
        assertThat(page).content().contains("Test farm");
    }

    @Test
    void aSeasonThatHasChangedSinceIsRefused() throws Exception {
        Path file = folder.resolve("season.yaml");
        Files.writeString(file, Files.readString(file) + "# a remark\n");
        Launcher.Result refused = InProcess.run("page", planned, "--force");
        assertThat(refused.exitCode()).isEqualTo(1);
        assertThat(refused.err())
                .contains("season.yaml", "make a new plan", "--season")
                .hasLineCount(1);
        assertNoTrace(refused);
    }

    @Test
    void aSeasonElsewhereIsNamed() throws Exception {
        Path elsewhere = Files.createDirectories(folder.resolve("a/b/c"));
        Path plan = Files.copy(Path.of(planned).resolve("plan.json"), elsewhere.resolve("plan.json"));
        Launcher.Result refused = InProcess.run("page", plan.toString());
        assertThat(refused.exitCode()).isEqualTo(1);
        assertThat(refused.err()).contains("--season SEASON").hasLineCount(1);
        assertThat(InProcess.run("page", plan.toString(), "--season", season).exitCode())
                .isZero();
        assertThat(elsewhere.resolve("plan.html")).exists();
    }

    @Test
    void aPlanCanBeWrittenWithoutItsPage() throws Exception {
        Path out = folder.resolve("bare");
        assertThat(InProcess.run("plan", season, "--steps", "0", "--no-page", "--out", out.toString())
                        .exitCode())
                .isZero();
        assertThat(out).isDirectoryNotContaining("glob:**.html");
    }
}

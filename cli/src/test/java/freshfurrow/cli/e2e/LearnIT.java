package freshfurrow.cli.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Learning from a log with the real command. */
final class LearnIT {
    private static final Pattern SHOWN = Pattern.compile(
            "<!-- output of: ./freshfurrow (.*?) -->\n```text\n(.*?)```\n.*?```yaml\n(.*?)```\n", Pattern.DOTALL);

    @TempDir
    private Path folder = Path.of("");

    @Test
    void theExampleOfTheDocumentIsReal() throws Exception {
        MatchResult shown = shown();
        Path variant = folder.resolve("learned.yaml");

        Launcher.Result result = Launcher.run(command(shown, "--out", variant.toString()));

        assertThat(result.err()).isEmpty();
        assertThat(result.out().replaceFirst("Written to .*\\R$", "")).isEqualTo(shown.group(2));
        assertThat(variant).hasContent(shown.group(3));
    }

    @Test
    void aPlanTakesTheVariant() throws Exception {
        Path variant = folder.resolve("learned.yaml");
        InProcess.run(command(shown(), "--out", variant.toString()));

        Launcher.Result plan = InProcess.run(
                "plan",
                Launcher.scenario("metric"),
                "--variant",
                variant.toString(),
                "--steps",
                "0",
                "--no-page",
                "--out",
                folder.resolve("plan").toString());

        assertThat(plan.err()).isEmpty();
        assertThat(plan.exitCode()).isZero();
    }

    @Test
    void aFileThatIsThereIsReplacedOnlyWhenThatIsSaid() throws Exception {
        Path variant = folder.resolve("learned.yaml");
        Files.writeString(variant, "mine");

        Launcher.Result refused = InProcess.run(command(shown(), "--out", variant.toString()));

        assertThat(refused.exitCode()).isEqualTo(1);
        assertThat(refused.err()).contains(variant.toString(), "--force");
        assertThat(variant).hasContent("mine");
        assertThat(InProcess.run(command(shown(), "--out", variant.toString(), "--force"))
                        .exitCode())
                .isZero();
        assertThat(variant).hasContent(shown().group(3));
    }

    @Test
    void whereNothingDiffersNoVariantIsWritten() throws Exception {
        SeasonOnDisk.in(folder);
        Path variant = folder.resolve("learned.yaml");

        Launcher.Result result = InProcess.run("learn", folder.toString(), "--out", variant.toString());

        assertThat(result.exitCode()).isEqualTo(1);
        assertThat(result.out()).contains("too few").contains("No figure of the season file differs");
        assertThat(result.err()).contains("nothing differs from the season file by more than chance");
        assertThat(variant).doesNotExist();
    }

    private static MatchResult shown() throws IOException {
        return SHOWN.matcher(Files.readString(
                        Launcher.projectFolder().resolve("docs").resolve("learn.md")))
                .results()
                .findFirst()
                .orElseThrow();
    }

    private static String[] command(MatchResult shown, String... more) {
        Path top = Launcher.projectFolder();
        return java.util.stream.Stream.concat(
                        Pattern.compile(" ")
                                .splitAsStream(shown.group(1))
                                .map(word -> word.startsWith("scenarios/")
                                        ? top.resolve(word).toString()
                                        : word),
                        List.of(more).stream())
                .toArray(String[]::new);
    }
}

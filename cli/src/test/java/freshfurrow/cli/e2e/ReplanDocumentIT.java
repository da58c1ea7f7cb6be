package freshfurrow.cli.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What docs/replan.md shows is what the program prints after the plan that the README shows. */
final class ReplanDocumentIT {
    private static final Pattern SHOWN =
            Pattern.compile("<!-- output of: ./freshfurrow (.*) -->\n```text\n(.*?)```\n", Pattern.DOTALL);

    @TempDir
    private Path folder = Path.of("");

    @Test
    void theOutputInTheDocumentIsReal() throws Exception {
        String plan = folder.resolve("plan").toString();
        Launcher.run("plan", "scenarios/first-season", "--steps", "20000", "--no-page", "--out", plan);
        Matcher document =
                SHOWN.matcher(Files.readString(Launcher.projectFolder().resolve("docs/replan.md")));
        assertThat(document.find()).isTrue();
        MatchResult shown = document.toMatchResult();
        List<String> arguments =
                new ArrayList<>(List.of(shown.group(1).replace("PLAN", plan).split(" ", -1)));

        String printed = Launcher.run(arguments.toArray(String[]::new)).out();

        assertThat(shown.group(2)).isEqualTo(printed.replaceFirst("(?s)\nWritten to .*$", ""));
    }
}

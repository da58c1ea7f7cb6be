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

/** What the README shows is what the program prints. */
final class ReadmeIT {
    private static final Pattern SHOWN =
            Pattern.compile("<!-- output of: ./freshfurrow (.*) -->\n```text\n(.*?)```\n", Pattern.DOTALL);

    @TempDir
    private Path folder = Path.of("");

    @Test
    void theOutputInTheReadmeIsReal() throws Exception {
        Matcher readme = SHOWN.matcher(Files.readString(Launcher.projectFolder().resolve("README.md")));
        assertThat(readme.find()).isTrue();
        MatchResult shown = readme.toMatchResult();
        List<String> arguments = new ArrayList<>(List.of(shown.group(1).split(" ", -1)));
        arguments.add("--out");
        arguments.add(folder.resolve("plan").toString());
        String printed = Launcher.run(arguments.toArray(String[]::new)).out();
        assertThat(shown.group(2)).isEqualTo(printed.replaceFirst("(?s)\nWritten to .*$", ""));
    }
}

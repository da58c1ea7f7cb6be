package freshfurrow.cli.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The totals and the bill that docs/method.md shows are what the program prints. */
final class MoneyDocumentIT {
    private static final Pattern SHOWN =
            Pattern.compile("<!-- output of: ./freshfurrow (.*) -->\n```text\n(.*?)```\n", Pattern.DOTALL);

    @TempDir
    private Path folder = Path.of("");

    @Test
    void theOutputInTheDocumentIsReal() throws Exception {
        Matcher document =
                SHOWN.matcher(Files.readString(Launcher.projectFolder().resolve("docs/method.md")));
        assertThat(document.find()).isTrue();
        List<String> arguments = new ArrayList<>(List.of(document.group(1).split(" ", -1)));
        arguments.addAll(List.of("--no-page", "--out", folder.resolve("plan").toString()));

        String printed = Launcher.run(arguments.toArray(String[]::new)).out();

        assertThat(printed).contains("\n\n" + document.group(2) + "\n");
    }
}

package freshfurrow.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** A browser learns of a script's imports only when it has the script; so the page names all of them, to be asked for at once. */
final class PreloadedScriptsTest {
    private static final Pattern IMPORT = Pattern.compile("^import .*\"/desk/(\\w+\\.js)\";$", Pattern.MULTILINE);
    private static final Pattern PRELOAD = Pattern.compile("<link rel=\"modulepreload\" href=\"/desk/(\\w+\\.js)\">");

    @Test
    void thePageNamesAllScriptsThatItsScriptImports() throws IOException {
        Set<String> imported = new TreeSet<>();
        gather("desk.js", imported);
        assertThat(names(PRELOAD, text("desk.html"))).isEqualTo(imported).contains("season.js", "taps.js");
    }

    private static void gather(String script, Set<String> all) throws IOException {
        for (String name : names(IMPORT, text(script))) {
            if (all.add(name)) {
                gather(name, all);
            }
        }
    }

    private static Set<String> names(Pattern pattern, String text) {
        return pattern.matcher(text)
                .results()
                .map(found -> found.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static String text(String name) throws IOException {
        try (InputStream in = PreloadedScriptsTest.class.getResourceAsStream("/freshfurrow/desk/" + name)) {
            return new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}

package freshfurrow.cli.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The parts of the page that are the same for every plan. */
final class PageFiles {
    private static final String DATES = "dates.js";

    /** In the order in which they build on one another. */
    private static final List<String> SCRIPTS = List.of(
            "kinds.js",
            "data.js",
            DATES,
            "figures.js",
            "fieldWords.js",
            "choice.js",
            "looks.js",
            "controls.js",
            "ledger.js",
            "season.js",
            "day.js",
            "map.js",
            "frames.js",
            "curves.js",
            "tables.js",
            "start.js");

    private PageFiles() {}

    static String template() {
        return read("page.html");
    }

    static String comparisonTemplate() {
        return read("comparison.html");
    }

    static String style() {
        return read("page.css");
    }

    static String comparisonStyle() {
        return style() + read("comparison.css");
    }

    static String script() {
        return script(SCRIPTS);
    }

    static String comparisonScript() {
        return script(List.of(DATES, "comparison.js"));
    }

    /** D3 with its licence, then ours, as one script. */
    private static String script(List<String> names) {
        StringBuilder script = new StringBuilder("/*\nD3, ")
                .append(read("d3/LICENSE").strip())
                .append("\n*/\n")
                .append(read("d3/d3.min.js"))
                .append("\n\"use strict\";\n");
        names.forEach(name -> script.append(read(name)));
        return script.toString();
    }

    private static String read(String name) {
        try (InputStream file = PageFiles.class.getResourceAsStream(name)) {
            if (file == null) {
                throw new IllegalStateException("the program was built without its " + name);
            }
            return new String(file.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

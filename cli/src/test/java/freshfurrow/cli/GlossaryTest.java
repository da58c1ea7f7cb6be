package freshfurrow.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What people read has the words of docs/glossary.md and no second words for them. */
final class GlossaryTest {
    private static final Path TOP = Path.of("..");
    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\\n]|\\\\.)*+)\"");
    private static final Pattern CODE = Pattern.compile("```.*?```|`[^`\\n]*`", Pattern.DOTALL);
    private static final Pattern SCRIPT_COMMENT = Pattern.compile("(?m)//.*$");

    /** Headings of tables for other programs, which keep their names. */
    private static final List<String> COLUMNS = List.of("not planted", "why not planted");

    private record Text(String where, String words) {}

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            dump                  ; \\blets? out\\b
            void                  ; \\btakeback\\b|\\btak(es?|en) back\\b
            unplanted             ; \\bunserved\\b|\\bnot planted\\b(?! (yet|from))
            compost lot           ; \\blots? of compost\\b
            on hand               ; \\b(is|are|was) there (from|on)\\b
            rig                   ; \\bextraction rigs?\\b
            fill                  ; \\brefills?\\b
            mix diluted           ; \\bthinned\\b
            use by                ; \\bgood until\\b
            days to spare         ; \\bdays in hand\\b
            cautions              ; \\bLook out\\b
            crew sheet            ; \\bcrews' sheets\\b
            actual                ; \\b[Tt]rue (time|amount)s?\\b
            finished              ; \\bplanted (in )?whole\\b
            bottleneck            ; \\bholds? (the|a) season back\\b|\\bgoes away when\\b|\\bmade free\\b
            proven                ; \\bproved best\\b|\\bno plan needs\\b
            planning noise        ; \\bluck of plans\\b
            simulate              ; \\bplay(s|ed)? .{0,20}\\bout\\b|\\blive[sd]? (through|by|best)\\b
            replan, or a new plan ; \\bplan(s|ned)? again\\b|\\bplan anew\\b
            start                 ; \\b(has|have|been|is) begun\\b
            separated by          ; \\bparted by\\b
            manufacturers         ; \\bmakers' manuals\\b
            ideal lift            ; \\bbest of lifts\\b
            extra                 ; \\bcomes? on top\\b
            invalid               ; \\bmakes no sense\\b
            is not a date         ; \\b(is|are) no (date|time|number|plan|unit|quantity|file|table|id|key|list|position|day of)\\b
            """)
    void aSecondWordForAThingIsNotUsed(String word, String second) throws IOException {
        Pattern pattern = Pattern.compile(second);
        List<String> found =
                texts().flatMap(text -> uses(text, pattern).stream()).collect(Collectors.toCollection(ArrayList::new));
        assertThat(found).as("say '%s'", word).isEmpty();
    }

    @Test
    void theGlossaryIsWhereReadersLookForIt() throws IOException {
        assertThat(TOP.resolve("README.md")).content().contains("(docs/glossary.md)");
        assertThat(TOP.resolve("DEVELOPERS.md")).content().contains("(docs/glossary.md)");
    }

    @Test
    void textsOfEveryKindAreLookedAt() throws IOException {
        List<Text> texts = texts().toList();
        assertThat(texts.stream().map(Text::where))
                .anyMatch(where -> where.endsWith("page.html"))
                .anyMatch(where -> where.endsWith("day.js"))
                .anyMatch(where -> where.endsWith("planning.js"))
                .anyMatch(where -> where.endsWith("safety.md"))
                .anyMatch(where -> where.endsWith("season.schema.json"))
                .anyMatch(where -> where.endsWith("PlanCommand.java"))
                .anyMatch(where -> where.endsWith("Keys.java"));
        assertThat(texts.stream().mapToInt(text -> text.words().length()).sum()).isGreaterThan(100_000);
    }

    private static List<String> uses(Text text, Pattern second) {
        List<String> found = new ArrayList<>();
        Matcher matcher = second.matcher(text.words());
        while (matcher.find()) {
            int from = Math.max(0, matcher.start() - 40);
            int to = Math.min(text.words().length(), matcher.end() + 40);
            found.add(text.where() + ": …" + text.words().substring(from, to).replace('\n', ' ') + "…");
        }
        return found;
    }

    /** Documents, page resources, the schema, and the text of the program: its literals of more than one word. */
    private static Stream<Text> texts() throws IOException {
        return Stream.of(
                        files(TOP.resolve("docs"), ".md", GlossaryTest::prose),
                        files(TOP.resolve("docs"), ".json", GlossaryTest::literals),
                        files(TOP.resolve("scenarios"), ".md", GlossaryTest::prose),
                        Stream.of(text(TOP.resolve("README.md"), GlossaryTest::prose)),
                        files(TOP.resolve("cli/src/main/resources/freshfurrow/cli/page"), ".html", words -> words),
                        files(TOP.resolve("cli/src/main/resources/freshfurrow/cli/page"), ".js", GlossaryTest::script),
                        files(TOP.resolve("cli/src/main/resources/freshfurrow/desk"), ".html", words -> words),
                        files(TOP.resolve("cli/src/main/resources/freshfurrow/desk"), ".js", GlossaryTest::script),
                        files(TOP.resolve("cli/src/main/java"), ".java", GlossaryTest::literals),
                        files(TOP.resolve("model/src/main/java"), ".java", GlossaryTest::literals),
                        files(TOP.resolve("solver/src/main/java"), ".java", GlossaryTest::literals))
                .flatMap(all -> all);
    }

    private interface Reading {
        String words(String file);
    }

    private static Stream<Text> files(Path folder, String end, Reading reading) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(path -> path.toString().endsWith(end)).sorted().toList().stream()
                    .map(path -> text(path, reading));
        }
    }

    private static Text text(Path path, Reading reading) {
        try {
            return new Text(TOP.relativize(path).toString(), reading.words(Files.readString(path)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String prose(String markdown) {
        return CODE.matcher(markdown).replaceAll("");
    }

    private static String script(String javascript) {
        return SCRIPT_COMMENT.matcher(javascript).replaceAll("");
    }

    private static String literals(String source) {
        return LITERAL.matcher(source)
                .results()
                .map(literal -> literal.group(1))
                .filter(literal -> literal.contains(" ") && !COLUMNS.contains(literal))
                .collect(Collectors.joining("\n"));
    }
}

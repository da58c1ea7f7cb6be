package freshfurrow.model.edit;

import freshfurrow.model.read.tree.FileProblem;
import freshfurrow.model.read.tree.Node;
import freshfurrow.model.read.tree.TextFile;
import freshfurrow.model.read.tree.TreeReader;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.reader.StreamReader;

/** Scalars as they are written, so that they are read back to the letter; in quotes where others are, or where it takes them. */
final class ScalarText {
    private static final Pattern JSON_NUMBER = Pattern.compile("-?(0|[1-9][0-9]*)(\\.[0-9]+)?([eE][+-]?[0-9]+)?");

    private ScalarText() {}

    /** JSON has quotes around all but numbers; a text that looks like one is one, unless it replaces what had quotes. */
    static String json(String text, Quotes before) {
        return before == Quotes.NONE && JSON_NUMBER.matcher(text).matches() ? text : quoted(text);
    }

    /**
     * A value in YAML; empty when there is no way to write it.
     *
     * @param flow whether it stands within brackets or braces
     * @param before what was around the value before
     */
    static Optional<String> yaml(String text, boolean flow, Quotes before) {
        return first(candidates(text, before), candidate -> isValue(candidate, flow, text));
    }

    /** A key in YAML; empty when there is no way to write it. */
    static Optional<String> yamlKey(String key, boolean flow) {
        return first(candidates(key, Quotes.NONE), candidate -> isKey(candidate, flow, key));
    }

    private static Optional<String> first(List<String> candidates, Predicate<String> right) {
        return candidates.stream().filter(right).findFirst();
    }

    private static List<String> candidates(String text, Quotes before) {
        String single = "'" + text.replace("'", "''") + "'";
        return switch (before) {
            case DOUBLE -> List.of(quoted(text));
            case SINGLE -> List.of(single, quoted(text));
            default -> List.of(text, quoted(text));
        };
    }

    /** Whether our own reader reads the candidate as the text, in each place where it could come to stand. */
    private static boolean isValue(String candidate, boolean flow, String text) {
        String document = flow
                ? "{a: " + candidate + ", b: [" + candidate + ", " + candidate + "], c: " + candidate + "}"
                : "a: " + candidate + "\nb:\n  - " + candidate + "\nc: " + candidate + " # comment\n";
        return read(document) instanceof Node.Mapping map
                && map.entries().keySet().equals(Set.of("a", "b", "c"))
                && isText(map.entries().get("a"), text)
                && isText(map.entries().get("c"), text)
                && map.entries().get("b") instanceof Node.Sequence list
                && list.items().size() == (flow ? 2 : 1)
                && list.items().stream().allMatch(item -> isText(item, text));
    }

    private static boolean isKey(String candidate, boolean flow, String key) {
        String document = flow ? "{" + candidate + ": x}" : candidate + ": x\n";
        return read(document) instanceof Node.Mapping map
                && map.entries().size() == 1
                && isText(map.entries().get(key), "x");
    }

    private static boolean isText(@Nullable Node node, String text) {
        return node instanceof Node.Text its && its.text().equals(text);
    }

    private static Node read(String document) {
        TextFile file = TextFile.of("", document);
        try {
            return TreeReader.yaml(file);
        } catch (FileProblem e) {
            return new Node.Nothing(e.place());
        }
    }

    /** In double quotes with escapes that JSON and YAML share. */
    static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        text.codePoints().forEach(character -> {
            switch (character) {
                case '"' -> quoted.append("\\\"");
                case '\\' -> quoted.append("\\\\");
                case '\n' -> quoted.append("\\n");
                case '\r' -> quoted.append("\\r");
                case '\t' -> quoted.append("\\t");
                default -> {
                    if (isPlain(character)) {
                        quoted.appendCodePoint(character);
                    } else {
                        quoted.append(String.format(Locale.ROOT, "\\u%04x", character));
                    }
                }
            }
        });
        return quoted.append('"').toString();
    }

    private static boolean isPlain(int character) {
        return StreamReader.isPrintable(character)
                && character != '\u0085'
                && character != '\u2028'
                && character != '\u2029'
                && character != '\ufeff'
                && Character.getType(character) != Character.SURROGATE;
    }
}

package freshfurrow.model.edit;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** What cells of a table say. */
final class CellText {
    private static final Pattern FIGURE_AND_UNIT = Pattern.compile("([+-]?[0-9.]+(?:[eE][+-]?[0-9]+)?)\\s*(.*)");

    private CellText() {}

    /** A value as the text of one cell, of a list with blanks between; empty when it has more parts than that. */
    static Optional<String> of(Value value) {
        if (value instanceof Value.Text text) {
            return Optional.of(text.text().strip());
        }
        return value instanceof Value.Items items && items.items().stream().allMatch(Value.Text.class::isInstance)
                ? Optional.of(items.items().stream()
                        .map(item -> ((Value.Text) item).text().strip())
                        .collect(Collectors.joining(" ")))
                : Optional.empty();
    }

    /** What to write under a header with that unit, so that the text is read. */
    static String withoutUnit(String text, String unit) {
        Matcher matcher = FIGURE_AND_UNIT.matcher(text);
        return !unit.isEmpty() && matcher.matches() && matcher.group(2).equals(unit) ? matcher.group(1) : text;
    }

    /** What is read where that is written under a header with that unit. */
    static String withUnit(String text, String unit) {
        Matcher matcher = FIGURE_AND_UNIT.matcher(text);
        return !unit.isEmpty() && matcher.matches() && matcher.group(2).isEmpty() ? text + " " + unit : text;
    }
}

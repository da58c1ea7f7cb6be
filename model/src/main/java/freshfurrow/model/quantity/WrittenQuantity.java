package freshfurrow.model.quantity;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A quantity as written: a figure and a unit.
 *
 * @param figure finite
 * @param unit as written, without spaces; empty when there is none
 */
public record WrittenQuantity(double figure, String unit) {
    private static final Pattern NO_BREAK_SPACE = Pattern.compile("[\\u00a0\\u202f]");
    private static final Pattern FORM =
            Pattern.compile("([+-]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][+-]?\\d+)?)\\s*([^\\d\\s.,+-][^\\s]*)?");

    /**
     * Reads a figure with a unit behind it; empty when the text is no such thing or the figure is not finite. No-break spaces,
     * which cannot be told from others by eye, count as spaces.
     */
    public static Optional<WrittenQuantity> parse(String text) {
        Matcher matcher =
                FORM.matcher(NO_BREAK_SPACE.matcher(text).replaceAll(" ").strip());
        if (!matcher.matches()) {
            return Optional.empty();
        }
        double figure = Double.parseDouble(matcher.group(1));
        if (!Double.isFinite(figure)) {
            return Optional.empty();
        }
        return Optional.of(new WrittenQuantity(
                figure, Optional.ofNullable(matcher.group(2)).orElse("")));
    }
}

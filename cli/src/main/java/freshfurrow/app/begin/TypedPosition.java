package freshfurrow.app.begin;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A position in degrees, as maps give it to copy: {@code 41.02, -97.01}, {@code 41.02 N 97.01 W}, {@code 46,65; 20,15}. */
public final class TypedPosition {
    private static final String DEGREES = "([+-]?\\d{1,3}(?:\\.\\d+)?)\\s*\\u00b0?\\s*";
    private static final Pattern PAIR = Pattern.compile(DEGREES + "([NS]?)\\s*[,;\\s]\\s*" + DEGREES + "([EW]?)");
    private static final String DEGREES_WITH_COMMA = "([+-]?\\d{1,3},\\d+)\\s*\\u00b0?\\s*";
    private static final Pattern PAIR_WITH_COMMAS =
            Pattern.compile(DEGREES_WITH_COMMA + "([NS]?)\\s*(?:[;\\s]|,\\s)\\s*" + DEGREES_WITH_COMMA + "([EW]?)");

    private TypedPosition() {}

    /**
     * Latitude and longitude.
     *
     * @param lat degrees north, as a file has them
     * @param lon degrees east, as a file has them
     */
    public record Position(String lat, String lon) {}

    /** Empty when it is not understood. */
    public static Optional<Position> read(String typed) {
        String text = typed.strip().toUpperCase(Locale.ROOT);
        return read(PAIR.matcher(text)).or(() -> read(PAIR_WITH_COMMAS.matcher(text)));
    }

    private static Optional<Position> read(Matcher pair) {
        if (!pair.matches()) {
            return Optional.empty();
        }
        return Optional.of(new Position(
                signed(pair.group(1), pair.group(2).equals("S")),
                signed(pair.group(3), pair.group(4).equals("W"))));
    }

    private static String signed(String degrees, boolean isOtherWay) {
        BigDecimal figure = new BigDecimal(degrees.replace(',', '.'));
        return (isOtherWay ? figure.negate() : figure).toPlainString();
    }
}

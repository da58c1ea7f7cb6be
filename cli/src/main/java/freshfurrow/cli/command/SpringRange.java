package freshfurrow.cli.command;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * Springs by number, counted from 1.
 *
 * @param first 1 or more
 * @param last not before {@code first}
 */
public record SpringRange(int first, int last) {
    /** The largest number that may be asked for. */
    public static final int MOST = 1_000_000;

    public List<Integer> numbers() {
        return IntStream.rangeClosed(first, last).boxed().toList();
    }

    /** Reads {@code 200}, the first so many, or {@code 201-400}. */
    public static final class Converter implements ITypeConverter<SpringRange> {
        private static final Pattern FORM = Pattern.compile("(?:(\\d{1,7})-)?(\\d{1,7})");

        @Override
        public SpringRange convert(String text) {
            Matcher matcher = FORM.matcher(text);
            if (matcher.matches()) {
                int first = matcher.group(1) == null ? 1 : Integer.parseInt(matcher.group(1));
                int last = Integer.parseInt(matcher.group(2));
                if (first >= 1 && first <= last && last <= MOST) {
                    return new SpringRange(first, last);
                }
            }
            throw new TypeConversionException(
                    "'" + text + "' are no springs; write how many, like 200, or which, like 201-400");
        }
    }
}

package freshfurrow.cli.command;

import freshfurrow.app.springs.SpringRange;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Springs of the command line: {@code 200}, the first so many, or {@code 201-400}. */
final class SpringRangeConverter implements ITypeConverter<SpringRange> {
    private static final Pattern FORM = Pattern.compile("(?:(\\d{1,7})-)?(\\d{1,7})");

    @Override
    public SpringRange convert(String text) {
        Matcher matcher = FORM.matcher(text);
        if (matcher.matches()) {
            int first = matcher.group(1) == null ? 1 : Integer.parseInt(matcher.group(1));
            int last = Integer.parseInt(matcher.group(2));
            if (first >= 1 && first <= last && last <= SpringRange.MOST) {
                return new SpringRange(first, last);
            }
        }
        throw new TypeConversionException(
                "'" + text + "' is not a number of springs; write how many, like 200, or which, like 201-400");
    }
}

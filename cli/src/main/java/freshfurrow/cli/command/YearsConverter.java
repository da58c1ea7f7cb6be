package freshfurrow.cli.command;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A span of years of the command line. */
final class YearsConverter implements ITypeConverter<YearsConverter.Years> {
    private static final Pattern SPAN = Pattern.compile("(\\d{4})(?:-(\\d{4}))?");

    /** Years from first to last, both included. */
    record Years(int first, int last) {
        static final Years ALL = new Years(0, 9999);

        boolean contains(int year) {
            return year >= first && year <= last;
        }
    }

    @Override
    public Years convert(String text) {
        Matcher span = SPAN.matcher(text);
        if (!span.matches()) {
            throw new TypeConversionException("'" + text + "' is no span of years; write it as 2010-2019 or 2019");
        }
        int first = Integer.parseInt(span.group(1));
        int last = span.group(2) == null ? first : Integer.parseInt(span.group(2));
        if (last < first) {
            throw new TypeConversionException("'" + text + "' ends before it begins; write the earlier year first");
        }
        return new Years(first, last);
    }
}

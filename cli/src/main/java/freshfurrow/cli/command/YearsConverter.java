package freshfurrow.cli.command;

import freshfurrow.app.springs.YearSpan;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A span of years of the command line. */
final class YearsConverter implements ITypeConverter<YearSpan> {
    private static final Pattern SPAN = Pattern.compile("(\\d{4})(?:-(\\d{4}))?");

    @Override
    public YearSpan convert(String text) {
        Matcher span = SPAN.matcher(text);
        if (!span.matches()) {
            throw new TypeConversionException("'" + text + "' is not a span of years; write it like 2010-2019 or 2019");
        }
        int first = Integer.parseInt(span.group(1));
        int last = span.group(2) == null ? first : Integer.parseInt(span.group(2));
        if (last < first) {
            throw new TypeConversionException("'" + text + "' ends before it starts; write the earlier year first");
        }
        return new YearSpan(first, last);
    }
}

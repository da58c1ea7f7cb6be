package freshfurrow.cli.command;

import freshfurrow.app.seasons.Slice;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A slice of a list, as {@code 3/10}: the third of ten. */
final class SliceConverter implements ITypeConverter<Slice> {
    private static final Pattern FORM = Pattern.compile("(\\d{1,7})/(\\d{1,7})");

    @Override
    public Slice convert(String text) {
        Matcher matcher = FORM.matcher(text);
        if (matcher.matches()) {
            int number = Integer.parseInt(matcher.group(1));
            int slices = Integer.parseInt(matcher.group(2));
            if (number >= 1 && number <= slices) {
                return new Slice(number, slices);
            }
        }
        throw new TypeConversionException(
                "'" + text + "' is not a slice; write which of how many, from 1/10 to 10/10 for ten");
    }
}

package freshfurrow.cli.command;

import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A local date and time of the command line, as in ISO 8601; to the second. */
final class MomentConverter implements ITypeConverter<LocalDateTime> {
    @Override
    public LocalDateTime convert(String text) {
        try {
            return LocalDateTime.parse(text.strip().replace(' ', 'T')).withNano(0);
        } catch (DateTimeParseException e) {
            throw new TypeConversionException("'" + text + "' is not a date and time; write it like 2027-05-03T15:10");
        }
    }
}

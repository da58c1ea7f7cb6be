package freshfurrow.cli.command;

import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A time of day of the command line, as in ISO 8601. */
final class ClockConverter implements ITypeConverter<LocalTime> {
    @Override
    public LocalTime convert(String text) {
        try {
            return LocalTime.parse(text);
        } catch (DateTimeParseException e) {
            throw new TypeConversionException("'" + text + "' is not a time of day; write it like 07:00");
        }
    }
}

package freshfurrow.cli.command;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A date of the command line, as in ISO 8601. */
final class DateConverter implements ITypeConverter<LocalDate> {
    @Override
    public LocalDate convert(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new TypeConversionException("'" + text + "' is not a date; write it like 2027-04-20");
        }
    }
}

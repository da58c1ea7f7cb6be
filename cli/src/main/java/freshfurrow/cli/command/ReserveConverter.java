package freshfurrow.cli.command;

import java.time.Duration;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A reserve of the command line: a length of time, or none. */
final class ReserveConverter implements ITypeConverter<Duration> {
    private static final Duration LONGEST = Duration.ofDays(1);

    @Override
    public Duration convert(String text) {
        if (text.strip().matches("0+ ?(s|min|h)?")) {
            return Duration.ZERO;
        }
        Duration reserve = new TimeConverter().convert(text);
        if (reserve.compareTo(LONGEST) > 0) {
            throw new TypeConversionException("'" + text + "' is out of range; use 0 to 24 h");
        }
        return reserve;
    }
}

package freshfurrow.cli.command;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A length of time of the command line, with its unit. */
final class TimeConverter implements ITypeConverter<Duration> {
    private static final Pattern TIME = Pattern.compile("([0-9]{1,9}(?:\\.[0-9]{1,3})?) ?(s|min|h)");
    private static final Duration LONGEST = Duration.ofDays(7);

    @Override
    public Duration convert(String text) {
        Matcher time = TIME.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (!time.matches()) {
            throw new TypeConversionException("'" + text + "' is not a length of time; write it like 30s, 5min or 1h");
        }
        long unitMs =
                switch (time.group(2)) {
                    case "s" -> 1_000;
                    case "min" -> 60_000;
                    default -> 3_600_000;
                };
        Duration duration = Duration.ofMillis(new BigDecimal(time.group(1))
                .multiply(BigDecimal.valueOf(unitMs))
                .longValue());
        if (duration.isZero() || duration.compareTo(LONGEST) > 0) {
            throw new TypeConversionException("'" + text + "' is out of range; use more than 0 s and at most 168 h");
        }
        return duration;
    }
}

package freshfurrow.app.begin;

import freshfurrow.model.quantity.TypedQuantity;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Answers as people type them, as the season file has them. */
final class TypedAnswer {
    /** Of the answer that there is none. */
    static final String NONE = "none";

    private static final int SHORTEST_WEEKDAY = 3;
    private static final Pattern ISO = Pattern.compile("(\\d{4})-(\\d{1,2})-(\\d{1,2})");
    private static final Pattern AMERICAN = Pattern.compile("(\\d{1,2})/(\\d{1,2})/(\\d{4})");
    private static final Pattern WITH_DOTS = Pattern.compile("(\\d{1,2})\\.(\\d{1,2})\\.(\\d{4})");
    private static final Pattern BETWEEN_DAYS =
            Pattern.compile("\\s+to\\s+|\\s*\\u2013\\s*|\\s+-\\s+|(?<=\\d{4}-\\d{2}-\\d{2})/");
    private static final Pattern FIGURE = Pattern.compile("\\d*\\.?\\d+");
    private static final Pattern PER_CENT = Pattern.compile("(\\d+(?:\\.\\d+)?) ?%");

    private TypedAnswer() {}

    /** Empty when it cannot be told what is meant. */
    static Optional<String> asWritten(Question question, String typed, UnitSystem units) {
        String text = typed.strip();
        return switch (question.form()) {
            case NAME -> Optional.of(Names.name(text)).filter(name -> !name.isEmpty());
            case DATE -> date(text, units);
            case WINDOW -> window(text, units);
            case ZONE -> zone(text);
            case HOURS -> TypedHours.asWritten(text);
            case CLOSED -> closed(text, units);
            case POSITION -> TypedPosition.read(text).map(position -> position.lat() + ", " + position.lon());
            case QUANTITY -> TypedQuantity.asWritten(text, question.kind().orElseThrow(), question.unit(units));
            case SHARE -> share(text);
            case CHOICE ->
                Optional.of(text.toLowerCase(Locale.ROOT))
                        .filter(choice -> choice.equals("field") || choice.equals("water"));
        };
    }

    /** As ISO 8601 has it; typed so, or month first with slashes where that is usual, or day first with points. */
    private static Optional<String> date(String text, UnitSystem units) {
        Matcher iso = ISO.matcher(text);
        if (iso.matches()) {
            return date(iso.group(1), iso.group(2), iso.group(3));
        }
        Matcher american = AMERICAN.matcher(text);
        if (units == UnitSystem.US && american.matches()) {
            return date(american.group(3), american.group(1), american.group(2));
        }
        Matcher dots = WITH_DOTS.matcher(text);
        return dots.matches() ? date(dots.group(3), dots.group(2), dots.group(1)) : Optional.empty();
    }

    private static Optional<String> date(String year, String month, String day) {
        try {
            return Optional.of(LocalDate.of(Integer.parseInt(year), Integer.parseInt(month), Integer.parseInt(day))
                    .toString());
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    /** The end that half a window lacks, {@code first day} or {@code last day}; empty for what is no half window. */
    static Optional<String> lackedEnd(Question question, String typed) {
        String text = typed.strip();
        if (question.form() != Form.WINDOW) {
            return Optional.empty();
        }
        if (text.startsWith("to ")) {
            return Optional.of("first day");
        }
        return text.endsWith(" to") ? Optional.of("last day") : Optional.empty();
    }

    private static Optional<String> window(String text, UnitSystem units) {
        String[] days = BETWEEN_DAYS.split(text, -1);
        if (days.length != 2) {
            return Optional.empty();
        }
        return date(days[0].strip(), units)
                .flatMap(first -> date(days[1].strip(), units).map(last -> first + "/" + last));
    }

    private static Optional<String> zone(String text) {
        return ZoneId.getAvailableZoneIds().stream()
                .filter(id -> id.equalsIgnoreCase(text))
                .findAny();
    }

    private static Optional<String> closed(String text, UnitSystem units) {
        if (text.equalsIgnoreCase(NONE)) {
            return Optional.of("");
        }
        List<String> days = new ArrayList<>();
        for (String part : text.split("[,;\\s]+", -1)) {
            Optional<String> day = weekday(part).or(() -> date(part, units));
            if (day.isEmpty()) {
                return Optional.empty();
            }
            days.add(day.get());
        }
        return Optional.of(String.join(", ", days));
    }

    private static Optional<String> weekday(String text) {
        String upper = text.toUpperCase(Locale.ROOT).replaceFirst("S$", "");
        return Arrays.stream(DayOfWeek.values())
                .map(DayOfWeek::name)
                .filter(name -> upper.length() >= SHORTEST_WEEKDAY && name.startsWith(upper))
                .findAny();
    }

    private static Optional<String> share(String text) {
        Matcher perCent = PER_CENT.matcher(text);
        if (perCent.matches()) {
            return Optional.of(new BigDecimal(perCent.group(1)).movePointLeft(2).toPlainString());
        }
        return Optional.of(text).filter(figure -> FIGURE.matcher(figure).matches());
    }
}

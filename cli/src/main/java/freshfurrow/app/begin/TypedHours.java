package freshfurrow.app.begin;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Hours as people type them, {@code 7-12, 1 to 8 pm}, as a season file has them: {@code 07:00/12:00, 13:00/20:00}. A time without am or
 * pm is of the 24-hour clock, unless it would then come before the one that stands before it: after noon, 1 is 1 pm.
 */
final class TypedHours {
    private static final Pattern BETWEEN = Pattern.compile("\\s*(?:/|-|\\u2013|\\bto\\b)\\s*");
    private static final Pattern CLOCK = Pattern.compile("(\\d{1,2})(?:[:.](\\d{2}))? ?(am|pm|a\\.m\\.|p\\.m\\.)?");
    /** Neither am nor pm, nor sure to be of the 24-hour clock. */
    private static final Pattern BARE = Pattern.compile("[1-9](?:[:.]\\d{2})?|1[01](?:[:.]\\d{2})?");

    private static final int NOON = 12;
    private static final int MIDNIGHT = 24;

    private TypedHours() {}

    /** Spans with commas between; empty when one of them is not understood. */
    static Optional<String> asWritten(String typed) {
        List<String> spans = new ArrayList<>();
        String before = "";
        for (String part : typed.split("[,;]", -1)) {
            String[] ends = BETWEEN.split(part.strip().toLowerCase(Locale.ROOT), -1);
            if (ends.length != 2) {
                return Optional.empty();
            }
            Optional<String> start = clock(ends[0], before);
            Optional<String> end = start.flatMap(from -> clock(ends[1], from));
            if (end.isEmpty()) {
                return Optional.empty();
            }
            spans.add(start.get() + "/" + end.get());
            before = end.get();
        }
        return Optional.of(String.join(", ", spans));
    }

    /** @param before the time that stands before it, as a file has it; empty for the first */
    private static Optional<String> clock(String typed, String before) {
        Optional<String> written = clock(typed);
        return written.filter(time -> BARE.matcher(typed).matches() && time.compareTo(before) < 0)
                .flatMap(time -> clock(typed + " pm"))
                .filter(afternoon -> afternoon.compareTo(before) >= 0)
                .or(() -> written);
    }

    private static Optional<String> clock(String typed) {
        if (typed.equals("noon")) {
            return Optional.of("12:00");
        }
        if (typed.equals("midnight")) {
            return Optional.of("24:00");
        }
        Matcher clock = CLOCK.matcher(typed);
        if (!clock.matches()) {
            return Optional.empty();
        }
        int hour = Integer.parseInt(clock.group(1));
        Optional<String> half = Optional.ofNullable(clock.group(3));
        if (half.isPresent()) {
            if (hour < 1 || hour > NOON) {
                return Optional.empty();
            }
            hour = hour % NOON + (half.get().startsWith("p") ? NOON : 0);
        }
        String minute = Optional.ofNullable(clock.group(2)).orElse("00");
        return hour > MIDNIGHT ? Optional.empty() : Optional.of(String.format(Locale.ROOT, "%02d:%s", hour, minute));
    }
}

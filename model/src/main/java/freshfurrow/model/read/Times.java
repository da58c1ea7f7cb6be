package freshfurrow.model.read;

import static freshfurrow.model.quantity.Factors.DAY_S;

import freshfurrow.model.read.tree.Node;
import freshfurrow.model.read.tree.Place;
import freshfurrow.model.season.ClosedDays;
import freshfurrow.model.season.DateWindow;
import freshfurrow.model.season.DaySpan;
import freshfurrow.model.season.WorkHours;
import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Dates, clock times and intervals as ISO 8601 writes them. */
final class Times {
    private static final Pattern CLOCK = Pattern.compile("([01][0-9]|2[0-3]):[0-5][0-9](:[0-5][0-9])?");
    private static final Pattern DATE_FROM_CLOCK = Pattern.compile("T|\\s+");
    private static final int LONGEST_WINDOW_D = 400;
    private static final int FIRST_YEAR = 2000;
    private static final int LAST_YEAR = 2099;

    private Times() {}

    static Optional<LocalDate> date(Node node, Problems problems) {
        return Keys.text(node, problems).flatMap(text -> date(text, node.place(), problems));
    }

    static Optional<LocalDate> date(String text, Place at, Problems problems) {
        try {
            LocalDate date = LocalDate.parse(text);
            if (date.getYear() < FIRST_YEAR || date.getYear() > LAST_YEAR) {
                problems.add(at, text + " is out of range", "use a year from " + FIRST_YEAR + " to " + LAST_YEAR);
                return Optional.empty();
            }
            return Optional.of(date);
        } catch (DateTimeException e) {
            problems.add(at, "'" + text + "' is not a date", "write year-month-day, like 2027-04-19");
            return Optional.empty();
        }
    }

    static Optional<ZoneId> zone(String text, Place at, Problems problems) {
        try {
            return Optional.of(ZoneId.of(text));
        } catch (DateTimeException e) {
            problems.add(at, "'" + text + "' is not a time zone", "write one like America/Chicago");
            return Optional.empty();
        }
    }

    /** A date interval with both ends included. */
    static Optional<DateWindow> window(Node node, Problems problems) {
        String remedy = "write first and last date, like 2027-04-20/2027-05-12";
        Optional<String> text = Keys.text(node, problems);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        String[] ends = text.get().strip().split("/", -1);
        if (ends.length != 2) {
            problems.add(node.place(), "'" + text.get() + "' is not a date interval", remedy);
            return Optional.empty();
        }
        Optional<LocalDate> first = date(ends[0].strip(), node.place(), problems);
        Optional<LocalDate> last = date(ends[1].strip(), node.place(), problems);
        if (first.isEmpty() || last.isEmpty()) {
            return Optional.empty();
        }
        if (last.get().isBefore(first.get())) {
            problems.add(node.place(), "the window ends before it opens", "put the earlier date first");
            return Optional.empty();
        }
        if (last.get().isAfter(first.get().plusDays(LONGEST_WINDOW_D))) {
            problems.add(
                    node.place(),
                    "the window is longer than " + LONGEST_WINDOW_D + " days",
                    "check the years of its dates");
            return Optional.empty();
        }
        return Optional.of(new DateWindow(first.get(), last.get()));
    }

    /** Seconds since midnight; 24:00 is the end of the day. */
    static Optional<Integer> clock(String text, Place at, Problems problems) {
        if (text.strip().equals("24:00")) {
            return Optional.of(DAY_S);
        }
        if (CLOCK.matcher(text.strip()).matches()) {
            return Optional.of(LocalTime.parse(text.strip()).toSecondOfDay());
        }
        problems.add(at, "'" + text + "' is not a time of day", "write hours and minutes, like 07:00");
        return Optional.empty();
    }

    /** A local date and time with a T or a space between, seconds if wanted; 24:00 is the next midnight. */
    static Optional<LocalDateTime> moment(String text, Place at, Problems problems) {
        String[] parts = DATE_FROM_CLOCK.split(text.strip(), -1);
        if (parts.length != 2) {
            problems.add(at, "'" + text + "' is not a date and time", "write both, like 2027-05-03T15:10");
            return Optional.empty();
        }
        Optional<LocalDate> date = date(parts[0], at, problems);
        Optional<Integer> clock = clock(parts[1], at, problems);
        return date.flatMap(day -> clock.map(day.atStartOfDay()::plusSeconds));
    }

    /** The hours of a machine or water point, or those given when it has none of its own. */
    static WorkHours hours(Keys keys, WorkHours otherwise) {
        return hours(keys, "hours", otherwise);
    }

    /** The hours that stand under a key, or those given when none do. */
    static WorkHours hours(Keys keys, String key, WorkHours otherwise) {
        List<Node.Text> texts = keys.texts(key);
        if (texts.isEmpty() && keys.has(key)) {
            keys.problem(key, "is empty", "write working hours, like " + key + ": [\"07:00/12:00\", \"12:30/20:00\"]");
        }
        List<DaySpan> spans = new ArrayList<>();
        texts.forEach(text -> span(text, keys.problems()).ifPresent(spans::add));
        spans.sort(Comparator.comparingInt(DaySpan::startS));
        for (int i = 1; i < spans.size(); i++) {
            if (spans.get(i).startS() < spans.get(i - 1).endS()) {
                keys.problem(key, "two spans overlap", "make each start when or after the one before it ends");
                return otherwise;
            }
        }
        return spans.isEmpty() ? otherwise : new WorkHours(spans);
    }

    static ClosedDays closed(Keys keys) {
        Set<DayOfWeek> weekdays = EnumSet.noneOf(DayOfWeek.class);
        Set<LocalDate> dates = new HashSet<>();
        for (Node.Text text : keys.texts("closed")) {
            Optional<DayOfWeek> weekday = weekday(text.text());
            if (weekday.isPresent()) {
                weekdays.add(weekday.get());
            } else if (!text.text().isEmpty() && Character.isLetter(text.text().charAt(0))) {
                keys.problems()
                        .add(
                                text.place(),
                                "'" + text.text() + "' is not a weekday",
                                "write SUNDAY or a date like 2027-05-31");
            } else {
                date(text, keys.problems()).ifPresent(dates::add);
            }
        }
        if (weekdays.size() == DayOfWeek.values().length) {
            keys.problem("closed", "closes every day of the week", "leave at least one weekday open");
        }
        return new ClosedDays(weekdays, dates);
    }

    private static Optional<DayOfWeek> weekday(String text) {
        for (DayOfWeek day : DayOfWeek.values()) {
            if (day.name().equals(text.toUpperCase(Locale.ROOT))) {
                return Optional.of(day);
            }
        }
        return Optional.empty();
    }

    private static Optional<DaySpan> span(Node.Text text, Problems problems) {
        String remedy = "write start and end, like \"07:00/12:00\"";
        String[] ends = text.text().split("/", -1);
        if (ends.length != 2) {
            problems.add(text.place(), "'" + text.text() + "' is not a span of hours", remedy);
            return Optional.empty();
        }
        Optional<Integer> start = clock(ends[0], text.place(), problems);
        Optional<Integer> end = clock(ends[1], text.place(), problems);
        if (start.isEmpty() || end.isEmpty()) {
            return Optional.empty();
        }
        if (end.get() <= start.get()) {
            problems.add(
                    text.place(),
                    "ends before it starts",
                    "put the earlier time first; write hours over midnight as two spans, like 20:00/24:00 and 00:00/04:00");
            return Optional.empty();
        }
        return Optional.of(new DaySpan(start.get(), end.get()));
    }
}

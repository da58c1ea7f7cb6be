package freshfurrow.solver.relaxation;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** Some of the many spans of days of a season: of one, two, four, eight days and so on, half overlapping, and of all days. */
final class DaySpans {
    private DaySpans() {}

    record Span(int first, int last) {}

    static List<Span> of(int days) {
        List<Span> spans = new ArrayList<>();
        for (int length = 1; length < days; length *= 2) {
            for (int first = 0; first + length <= days; first += Math.max(1, length / 2)) {
                spans.add(new Span(first, first + length - 1));
            }
        }
        spans.add(new Span(0, days - 1));
        return spans;
    }

    /** Those of two days or more, and all of two or more that begin on one day. */
    static List<Span> ofSeveralDays(int first, int days) {
        Set<Span> spans = new LinkedHashSet<>();
        of(days).stream().filter(span -> span.first() < span.last()).forEach(spans::add);
        fromDay(first, days).stream().filter(span -> span.first() < span.last()).forEach(spans::add);
        return List.copyOf(spans);
    }

    /** All that begin on a day. */
    static List<Span> fromDay(int first, int days) {
        return IntStream.range(first, days)
                .mapToObj(last -> new Span(first, last))
                .toList();
    }
}

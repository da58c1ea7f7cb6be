package freshfurrow.model.season;

import static freshfurrow.model.quantity.Factors.DAY_S;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The spans of a day in which a machine or a water point works, in order and apart from one another. */
public record WorkHours(List<DaySpan> spans) {
    /** All day long. */
    public static final WorkHours ALWAYS = new WorkHours(List.of(new DaySpan(0, DAY_S)));

    public WorkHours {
        spans = List.copyOf(spans);
        if (spans.isEmpty()) {
            throw new IllegalArgumentException("no working hours");
        }
        for (int i = 1; i < spans.size(); i++) {
            if (spans.get(i).startS() < spans.get(i - 1).endS()) {
                throw new IllegalArgumentException("working hours overlap or are out of order: " + spans);
            }
        }
    }

    /**
     * When its working day ends, seconds since midnight: hours that go on past midnight belong to the day on which they began, hours round
     * the clock end at midnight.
     */
    public int dayEndS() {
        return spans.get(goOnPastMidnight() ? 0 : spans.size() - 1).endS();
    }

    /** These hours with a working day that ends so much later, s, but not past midnight or into hours that follow. */
    public WorkHours goingOn(int s) {
        List<DaySpan> longer = new ArrayList<>();
        for (int i = 0; i < spans.size(); i++) {
            DaySpan span = spans.get(i);
            int next = i + 1 < spans.size() ? spans.get(i + 1).startS() : DAY_S;
            longer.add(span.endS() == dayEndS() ? new DaySpan(span.startS(), Math.min(next, span.endS() + s)) : span);
        }
        return new WorkHours(longer);
    }

    /**
     * When its working day begins, seconds since midnight. Hours that go on past midnight belong to the day on which they began; hours round
     * the clock begin anew at midnight.
     */
    public int dayStartS() {
        return spans.get(goOnPastMidnight() ? 1 : 0).startS();
    }

    private boolean goOnPastMidnight() {
        return spans.size() > 1
                && spans.get(0).startS() == 0
                && spans.get(spans.size() - 1).endS() == DAY_S;
    }

    /** What is left of these hours when time is kept for what each day begins and ends with; empty when nothing is. */
    public Optional<WorkHours> without(KeptTime kept) {
        List<int[]> day = new ArrayList<>();
        Stream.concat(
                        spans.stream()
                                .filter(span -> span.startS() >= dayStartS())
                                .map(span -> shifted(span, 0)),
                        spans.stream()
                                .filter(span -> span.startS() < dayStartS())
                                .map(span -> shifted(span, DAY_S)))
                .forEach(span -> append(day, span));
        List<DaySpan> left = kept.leaves(day).stream()
                .flatMap(WorkHours::byTheClock)
                .sorted(Comparator.comparingInt(DaySpan::startS))
                .toList();
        return left.isEmpty() ? Optional.empty() : Optional.of(new WorkHours(left));
    }

    /** What lies in these hours and in others; empty when nothing does. */
    public Optional<WorkHours> within(WorkHours others) {
        List<DaySpan> both = new ArrayList<>();
        for (DaySpan span : spans) {
            for (DaySpan other : others.spans) {
                int start = Math.max(span.startS(), other.startS());
                int end = Math.min(span.endS(), other.endS());
                if (start < end) {
                    both.add(new DaySpan(start, end));
                }
            }
        }
        return both.isEmpty() ? Optional.empty() : Optional.of(new WorkHours(both));
    }

    private static int[] shifted(DaySpan span, int s) {
        return new int[] {span.startS() + s, span.endS() + s};
    }

    private static void append(List<int[]> day, int[] span) {
        int last = day.size() - 1;
        if (last >= 0 && day.get(last)[1] == span[0]) {
            day.set(last, new int[] {day.get(last)[0], span[1]});
        } else {
            day.add(span);
        }
    }

    private static Stream<DaySpan> byTheClock(int[] span) {
        if (span[0] >= DAY_S) {
            return Stream.of(new DaySpan(span[0] - DAY_S, span[1] - DAY_S));
        }
        return span[1] <= DAY_S
                ? Stream.of(new DaySpan(span[0], span[1]))
                : Stream.of(new DaySpan(span[0], DAY_S), new DaySpan(0, span[1] - DAY_S));
    }
}

package freshfurrow.model.season;

import static freshfurrow.model.quantity.Factors.DAY_S;

import java.util.ArrayList;
import java.util.List;

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
        DaySpan first = spans.get(0);
        DaySpan last = spans.get(spans.size() - 1);
        boolean goesOn = first.startS() == 0 && first.endS() < DAY_S && last.endS() == DAY_S;
        return goesOn ? first.endS() : last.endS();
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
}

package freshfurrow.solver.why;

import static freshfurrow.model.quantity.Factors.DAY_S;
import static freshfurrow.model.quantity.Factors.MINUTE_S;

import freshfurrow.model.season.DaySpan;
import freshfurrow.model.season.WorkHours;
import java.util.ArrayList;
import java.util.List;

/** Working hours that are longer: at the end of the day, and before its beginning where midnight comes first. */
final class LongerHours {
    private LongerHours() {}

    /** @param minutes 0 or more, at most {@link #most} */
    static WorkHours of(WorkHours hours, int minutes) {
        List<DaySpan> spans = new ArrayList<>(hours.spans());
        int last = spans.size() - 1;
        int end = spans.get(last).endS() + MINUTE_S * minutes;
        spans.set(last, new DaySpan(spans.get(last).startS(), Math.min(DAY_S, end)));
        int before = Math.max(0, end - DAY_S);
        spans.set(
                0,
                new DaySpan(
                        Math.max(0, spans.get(0).startS() - before),
                        spans.get(0).endS()));
        return new WorkHours(spans);
    }

    /** Whole minutes by which the day can be longer, 0 or more. */
    static int most(WorkHours hours) {
        List<DaySpan> spans = hours.spans();
        return (DAY_S - spans.get(spans.size() - 1).endS() + spans.get(0).startS()) / MINUTE_S;
    }
}

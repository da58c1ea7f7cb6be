package freshfurrow.model.season;

import static freshfurrow.model.quantity.Factors.DAY_S;

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
}

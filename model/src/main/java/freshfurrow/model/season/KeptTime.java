package freshfurrow.model.season;

import java.util.ArrayList;
import java.util.List;

/**
 * What is kept of each day of a machine's hours for what the day begins and ends with, so that all other work lies between.
 *
 * @param firstS s, 0 or more; likewise {@code lastS}
 */
public record KeptTime(int firstS, int lastS) {
    public static final KeptTime NONE = new KeptTime(0, 0);

    /** This without what a day begins with. */
    public KeptTime ofADayBegun() {
        return new KeptTime(0, lastS);
    }

    /**
     * What is left of the periods of one day, in order and apart from one another, each {start, end}: the first loses what is kept at its
     * start, the last at its end. One that is shorter than that is not worked in, and the next is the first, or the one before the last.
     */
    public List<int[]> leaves(List<int[]> day) {
        int first = 0;
        while (first < day.size() && length(day.get(first)) < firstS) {
            first++;
        }
        List<int[]> left = new ArrayList<>(day.subList(first, day.size()));
        if (firstS > 0 && !left.isEmpty()) {
            left.set(0, new int[] {left.get(0)[0] + firstS, left.get(0)[1]});
        }
        while (!left.isEmpty() && length(left.get(left.size() - 1)) < lastS) {
            left.remove(left.size() - 1);
        }
        if (lastS > 0 && !left.isEmpty()) {
            int[] last = left.remove(left.size() - 1);
            left.add(new int[] {last[0], last[1] - lastS});
        }
        left.removeIf(period -> length(period) == 0);
        return left;
    }

    private static int length(int[] period) {
        return period[1] - period[0];
    }
}

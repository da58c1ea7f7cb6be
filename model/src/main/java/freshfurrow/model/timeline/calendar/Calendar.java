package freshfurrow.model.timeline.calendar;

import freshfurrow.model.season.KeptTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;

/**
 * The periods in which something may happen: whole seconds since the season's first midnight, in order, apart from one
 * another. All questions are answered without allocation.
 */
public final class Calendar {
    /** A time that never comes; small enough that a duration can be added to it. */
    public static final int NEVER = Integer.MAX_VALUE / 2;

    /** Slots of 4,096 s. */
    private static final int SLOT_BITS = 12;

    /** Words of 64 slots. */
    private static final int WORD_BITS = 6;

    private final int[] start;
    private final int[] end;
    /** Period length before each period, s. */
    private final int[] workBefore;
    /** For each slot, the first period that ends after it begins. */
    private final int[] firstBySlot;
    /** Slots that lie in a period from end to end, a bit each. */
    private final long[] wholeSlots;
    /** By day, the midnight that begins the last day before it with a period; 0 when there is none. */
    private final int[] lastWorkDayS;

    private Calendar(int[] start, int[] end, int horizonS) {
        this.start = start;
        this.end = end;
        workBefore = new int[start.length + 1];
        for (int i = 0; i < start.length; i++) {
            workBefore[i + 1] = workBefore[i] + end[i] - start[i];
        }
        firstBySlot = new int[(horizonS >> SLOT_BITS) + 2];
        int i = 0;
        for (int slot = 0; slot < firstBySlot.length; slot++) {
            while (i < start.length && end[i] <= slot << SLOT_BITS) {
                i++;
            }
            firstBySlot[slot] = i;
        }
        wholeSlots = new long[(firstBySlot.length >> WORD_BITS) + 1];
        for (int slot = 0; slot < firstBySlot.length; slot++) {
            int period = firstBySlot[slot];
            if (startOf(period) <= slot << SLOT_BITS && endOf(period) >= (slot + 1) << SLOT_BITS) {
                wholeSlots[slot >> WORD_BITS] |= 1L << slot;
            }
        }
        lastWorkDayS = new int[horizonS / Calendars.DAY_S + 1];
        for (int day = 0; day < lastWorkDayS.length; day++) {
            int lastWork = Math.max(0, latest(day * Calendars.DAY_S, 1) - 1);
            lastWorkDayS[day] = lastWork / Calendars.DAY_S * Calendars.DAY_S;
        }
    }

    /** A calendar of the given periods, each {start, end}, in any order. */
    static Calendar of(List<int[]> periods, int horizonS) {
        List<int[]> joined = joined(periods);
        return new Calendar(
                joined.stream().mapToInt(period -> period[0]).toArray(),
                joined.stream().mapToInt(period -> period[1]).toArray(),
                horizonS);
    }

    /** The times that are in any of the calendars. */
    public static Calendar union(List<Calendar> calendars, int horizonS) {
        List<int[]> periods = new ArrayList<>();
        for (Calendar calendar : calendars) {
            for (int i = 0; i < calendar.start.length; i++) {
                periods.add(new int[] {calendar.start[i], calendar.end[i]});
            }
        }
        return of(periods, horizonS);
    }

    /** The same times, in order and apart: joined where they touch or overlap. */
    static List<int[]> joined(List<int[]> periods) {
        List<int[]> joined = new ArrayList<>();
        for (int[] period : periods.stream()
                .sorted(Comparator.comparingInt(period -> period[0]))
                .toList()) {
            int[] before = joined.isEmpty() ? null : joined.get(joined.size() - 1);
            if (period[0] >= period[1]) {
                continue;
            }
            if (before != null && period[0] <= before[1]) {
                before[1] = Math.max(before[1], period[1]);
            } else {
                joined.add(period.clone());
            }
        }
        return joined;
    }

    /** This calendar less the closures, which are in order and apart. */
    Calendar without(List<int[]> closures, int horizonS) {
        List<int[]> left = new ArrayList<>();
        for (int i = 0; i < start.length; i++) {
            int from = start[i];
            for (int[] closure : closures) {
                if (closure[1] > from && closure[0] < end[i]) {
                    left.add(new int[] {from, Math.max(from, closure[0])});
                    from = closure[1];
                }
            }
            left.add(new int[] {from, Math.max(from, end[i])});
        }
        return of(left, horizonS);
    }

    /** This calendar less what is kept of each day; days begin so many seconds after midnight. */
    Calendar without(KeptTime kept, int dayStartS, OptionalInt dayBegun, int horizonS) {
        List<int[]> left = new ArrayList<>();
        List<int[]> day = new ArrayList<>();
        int number = 0;
        for (int[] piece : byDay(dayStartS)) {
            int its = Math.floorDiv(piece[0] - dayStartS, Calendars.DAY_S);
            if (its != number) {
                left.addAll(kept(kept, number, dayBegun).leaves(day));
                day.clear();
                number = its;
            }
            day.add(piece);
        }
        left.addAll(kept(kept, number, dayBegun).leaves(day));
        return of(left, horizonS);
    }

    private static KeptTime kept(KeptTime kept, int day, OptionalInt dayBegun) {
        return dayBegun.isPresent() && dayBegun.getAsInt() == day ? kept.ofADayBegun() : kept;
    }

    /** The periods, cut where a day begins. */
    private List<int[]> byDay(int dayStartS) {
        List<int[]> pieces = new ArrayList<>();
        for (int i = 0; i < start.length; i++) {
            int from = start[i];
            while (from < end[i]) {
                int nextDay = (Math.floorDiv(from - dayStartS, Calendars.DAY_S) + 1) * Calendars.DAY_S + dayStartS;
                int until = Math.min(end[i], nextDay);
                pieces.add(new int[] {from, until});
                from = until;
            }
        }
        return pieces;
    }

    public int periods() {
        return start.length;
    }

    public int startOf(int period) {
        return period < start.length ? start[period] : NEVER;
    }

    public int endOf(int period) {
        return period < end.length ? end[period] : NEVER;
    }

    /** Index of the first period that ends after {@code t}; {@link #periods()} when there is none. */
    public int periodAt(int t) {
        int slot = t >> SLOT_BITS;
        if (slot >= firstBySlot.length) {
            return start.length;
        }
        int i = firstBySlot[slot];
        while (i < end.length && end[i] <= t) {
            i++;
        }
        return i;
    }

    /** Whether {@code t} is inside a period. */
    public boolean holds(int t) {
        int slot = t >> SLOT_BITS;
        boolean isWhole = slot < firstBySlot.length && (wholeSlots[slot >> WORD_BITS] >> slot & 1) == 1;
        return isWhole || next(t) == t;
    }

    /** The first moment at or after {@code t} inside a period. */
    public int next(int t) {
        int i = periodAt(t);
        return i < start.length ? Math.max(t, start[i]) : NEVER;
    }

    /** The start of the first period that begins after {@code t}. */
    public int nextStart(int t) {
        int i = periodAt(t);
        if (i < start.length && start[i] <= t) {
            i++;
        }
        return startOf(i);
    }

    /** The first s at or after {@code t} such that s to s + {@code duration} lies in one period. */
    public int earliest(int t, int duration) {
        for (int i = periodAt(t); i < start.length; i++) {
            int s = Math.max(t, start[i]);
            if (s + duration <= end[i]) {
                return s;
            }
        }
        return NEVER;
    }

    /** The last e at or before {@code t} such that e - {@code duration} to e lies in one period; -1 when there is none. */
    public int latest(int t, int duration) {
        int i = Math.min(periodAt(t), start.length - 1);
        for (; i >= 0; i--) {
            int e = Math.min(t, end[i]);
            if (e - duration >= start[i]) {
                return e;
            }
        }
        return -1;
    }

    /** Start of the period that holds {@code t} or is the last one begun by then; -1 when none has. */
    public int startBefore(int t) {
        int i = Math.min(periodAt(t), start.length - 1);
        while (i >= 0 && start[i] > t) {
            i--;
        }
        return i < 0 ? -1 : start[i];
    }

    /** The midnight that begins the last day with a period before the day of a time of the season, s; 0 when there is none. */
    public int lastWorkDayS(int s) {
        return lastWorkDayS[s / Calendars.DAY_S];
    }

    /** Seconds of all periods between two times. */
    public int work(int from, int to) {
        return to <= from ? 0 : workUntil(to) - workUntil(from);
    }

    private int workUntil(int t) {
        int i = periodAt(t);
        return workBefore[i] + (i < start.length ? Math.max(0, t - start[i]) : 0);
    }

    @Override
    public String toString() {
        return Arrays.toString(start) + Arrays.toString(end);
    }
}

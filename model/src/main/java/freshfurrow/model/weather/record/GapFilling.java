package freshfurrow.model.weather.record;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.IntPredicate;

/**
 * Fills short gaps of a record by a stated rule. Temperatures missing for up to {@value #LONGEST_INTERPOLATED_D} days between known ones are
 * interpolated. All else that is missing for up to {@value #LONGEST_FILLED_D} days is taken from the same dates of the nearest year that has them all,
 * the earlier of two: rain must not be smoothed or left out, or the ground would be too dry. Longer gaps stay.
 */
public final class GapFilling {
    /** Longest run of days that is filled. */
    public static final int LONGEST_FILLED_D = 31;

    private static final int LONGEST_INTERPOLATED_D = 5;

    private final WeatherRecord before;
    private final double[] tmaxC;
    private final double[] tminC;
    private final double[] rainMm;
    private final List<Filling> fillings = new ArrayList<>();
    private final List<Filling> unfilled = new ArrayList<>();

    /** Fills what it can of a record. */
    public GapFilling(WeatherRecord record) {
        before = record;
        int days = record.days();
        tmaxC = new double[days];
        tminC = new double[days];
        rainMm = new double[days];
        for (int day = 0; day < days; day++) {
            tmaxC[day] = record.tmaxC(day);
            tminC[day] = record.tminC(day);
            rainMm[day] = record.rainMm(day);
        }
        fill(true, record::rainKnown);
        fill(false, record::temperaturesKnown);
    }

    /** The record with its short gaps filled. */
    public WeatherRecord record() {
        return new WeatherRecord(before.first(), tmaxC, tminC, rainMm);
    }

    /** What was filled, rain first, each in order. */
    public List<Filling> fillings() {
        return List.copyOf(fillings);
    }

    /** Short gaps whose dates no other year has. */
    public List<Filling> unfilled() {
        return List.copyOf(unfilled);
    }

    private void fill(boolean rain, IntPredicate known) {
        int day = 0;
        while (day < before.days()) {
            int end = day;
            while (end < before.days() && !known.test(end)) {
                end++;
            }
            if (end > day && end - day <= LONGEST_FILLED_D) {
                fill(rain, day, end, known);
            }
            day = end + 1;
        }
    }

    /** Fills the days from {@code begin} to before {@code end}. */
    private void fill(boolean rain, int begin, int end, IntPredicate known) {
        LocalDate first = before.first().plusDays(begin);
        LocalDate last = before.first().plusDays(end - 1L);
        if (!rain && end - begin <= LONGEST_INTERPOLATED_D && begin > 0 && end < before.days()) {
            interpolate(tmaxC, begin, end);
            interpolate(tminC, begin, end);
            fillings.add(new Filling(first, last, false, OptionalInt.empty()));
            return;
        }
        int years = before.last().getYear() - before.first().getYear();
        for (int apart = 1; apart <= years; apart++) {
            for (int shift : new int[] {-apart, apart}) {
                if (has(begin, end, shift, known)) {
                    copy(rain, begin, end, shift);
                    fillings.add(new Filling(first, last, rain, OptionalInt.of(first.getYear() + shift)));
                    return;
                }
            }
        }
        unfilled.add(new Filling(first, last, rain, OptionalInt.empty()));
    }

    private boolean has(int begin, int end, int shift, IntPredicate known) {
        for (int day = begin; day < end; day++) {
            int other = sameDate(day, shift);
            if (other < 0 || other >= before.days() || !known.test(other)) {
                return false;
            }
        }
        return true;
    }

    private void copy(boolean rain, int begin, int end, int shift) {
        for (int day = begin; day < end; day++) {
            int other = sameDate(day, shift);
            if (rain) {
                rainMm[day] = before.rainMm(other);
            } else {
                tmaxC[day] = before.tmaxC(other);
                tminC[day] = before.tminC(other);
            }
        }
    }

    /** 29 February is the 28th of a year that has none. */
    private int sameDate(int day, int shift) {
        return before.day(before.first().plusDays(day).plusYears(shift));
    }

    private static void interpolate(double[] figures, int begin, int end) {
        double from = figures[begin - 1];
        double step = (figures[end] - from) / (end - begin + 1);
        for (int day = begin; day < end; day++) {
            figures[day] = from + step * (day - begin + 1);
        }
    }
}

package freshfurrow.model.timeline.actual;

import static freshfurrow.model.timeline.calendar.Calendar.NEVER;

import freshfurrow.model.season.TimeSpread.Breakdowns;
import freshfurrow.model.timeline.calendar.Calendar;
import freshfurrow.model.timeline.calendar.Calendars;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ContinuousSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/**
 * When one machine is down in a season: it breaks down as in a Poisson process of its working time, and how long it then is down is exponential. Each
 * day has random numbers of its own.
 */
final class DownTimes {
    private final int[] start;
    private final int[] end;

    private DownTimes(List<int[]> times) {
        start = times.stream().mapToInt(time -> time[0]).toArray();
        end = times.stream().mapToInt(time -> time[1]).toArray();
    }

    /** @param hours of the machine */
    static DownTimes of(Optional<Breakdowns> breakdowns, Calendar hours, long key, int days) {
        List<int[]> times = new ArrayList<>();
        if (breakdowns.isPresent()) {
            for (int day = 0; day < days; day++) {
                UniformRandomProvider random = KeyedRandom.of(KeyedRandom.key(key, day));
                ContinuousSampler exponential = ZigguratSampler.Exponential.of(random);
                double s = exponential.sample() * breakdowns.get().betweenS();
                while (s < Calendars.DAY_S) {
                    int begins = day * Calendars.DAY_S + (int) s;
                    int downS = (int)
                            Math.ceil(exponential.sample() * breakdowns.get().downS());
                    if (hours.holds(begins) && (times.isEmpty() || times.get(times.size() - 1)[1] < begins)) {
                        times.add(new int[] {begins, begins + downS});
                    }
                    s += exponential.sample() * breakdowns.get().betweenS();
                }
            }
        }
        return new DownTimes(times);
    }

    /** The first moment at or after {@code s} at which it works. */
    int upFrom(int s) {
        int i = firstEndingAfter(s);
        return i < start.length && start[i] <= s ? end[i] : s;
    }

    /** When it breaks down next after {@code s}, at which it works; {@link Calendar#NEVER} when it does not. */
    int nextDown(int s) {
        int i = firstEndingAfter(s);
        return i < start.length ? start[i] : NEVER;
    }

    /** When work that begins at {@code from} is done that takes {@code durationS} while the machine works. */
    int end(int from, int durationS) {
        int done = from + durationS;
        for (int i = firstEndingAfter(from); i < start.length && start[i] < done; i++) {
            done += end[i] - Math.max(from, start[i]);
        }
        return done;
    }

    private int firstEndingAfter(int s) {
        int i = 0;
        while (i < end.length && end[i] <= s) {
            i++;
        }
        return i;
    }
}

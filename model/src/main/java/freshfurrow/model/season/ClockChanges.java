package freshfurrow.model.season;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.time.zone.ZoneOffsetTransition;
import java.util.ArrayList;
import java.util.List;

/**
 * What passes between two times that a clock shows, where clocks are put forward or back in between. Of a time that comes twice the
 * first is meant. Moments are seconds of the clock since an origin, a season's first midnight.
 */
public final class ClockChanges {
    private final LocalDateTime origin;
    private final List<Change> changes;
    private final int[] fromS;
    private final int[] untilS;

    /**
     * One change.
     *
     * @param at what clocks show when they are changed
     * @param then what they show once they are changed
     */
    public record Change(LocalDateTime at, LocalDateTime then) {
        /** Whether clocks are put back, so that times come twice; else times are left out. */
        public boolean back() {
            return then.isBefore(at);
        }

        /** Start of the times that are left out or come twice. */
        public LocalDateTime from() {
            return back() ? then : at;
        }

        /** Their end. */
        public LocalDateTime until() {
            return back() ? at : then;
        }
    }

    /**
     * The changes, by seconds since some origin.
     *
     * @param changes in order
     */
    public ClockChanges(LocalDateTime origin, List<Change> changes) {
        this.origin = origin;
        this.changes = List.copyOf(changes);
        fromS = changes.stream().mapToInt(change -> seconds(change.from())).toArray();
        untilS = changes.stream().mapToInt(change -> seconds(change.until())).toArray();
    }

    /** Those of a zone that begin before {@code end} and are not over at {@code midnight}. */
    static ClockChanges of(ZoneId zone, LocalDateTime midnight, LocalDateTime end) {
        List<Change> found = new ArrayList<>();
        var before = midnight.minusDays(2).atZone(zone).toInstant();
        ZoneOffsetTransition next = zone.getRules().nextTransition(before);
        while (next != null) {
            Change change = new Change(next.getDateTimeBefore(), next.getDateTimeAfter());
            if (!change.from().isBefore(end)) {
                break;
            }
            if (change.until().isAfter(midnight)) {
                found.add(change);
            }
            next = zone.getRules().nextTransition(next.getInstant());
        }
        return new ClockChanges(midnight, found);
    }

    /** In order. */
    public List<Change> all() {
        return changes;
    }

    /** What clocks show {@code s} seconds after a moment; the start of times that come twice instead of one of them. */
    public int after(int moment, int s) {
        int clock = passed(moment) + s;
        for (int i = 0; i < fromS.length; i++) {
            int length = untilS[i] - fromS[i];
            if (!changes.get(i).back()) {
                clock += clock >= fromS[i] ? length : 0;
            } else if (clock >= untilS[i] + length) {
                clock -= length;
            } else {
                clock = Math.min(clock, fromS[i]);
            }
        }
        return Math.max(moment, clock);
    }

    /** What passes from a moment to another, s; below 0 when the other comes first. */
    public int between(int moment, int other) {
        return passed(other) - passed(moment);
    }

    /** Likewise, of local times. */
    public LocalDateTime after(LocalDateTime time, int s) {
        return origin.plusSeconds(after(seconds(time), s));
    }

    /** Likewise, of local times. */
    public Duration between(LocalDateTime time, LocalDateTime other) {
        return Duration.ofSeconds(between(seconds(time), seconds(other)));
    }

    private int passed(int clock) {
        int passed = clock;
        for (int i = 0; i < untilS.length; i++) {
            if (clock >= untilS[i]) {
                int length = untilS[i] - fromS[i];
                passed += changes.get(i).back() ? length : -length;
            }
        }
        return passed;
    }

    private int seconds(LocalDateTime time) {
        return Math.toIntExact(ChronoUnit.SECONDS.between(origin, time));
    }
}

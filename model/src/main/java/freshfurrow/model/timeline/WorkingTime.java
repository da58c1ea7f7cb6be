package freshfurrow.model.timeline;

import freshfurrow.model.timeline.calendar.Calendar;
import freshfurrow.model.timeline.calendar.Calendars;
import freshfurrow.model.timeline.tables.SeasonTables;
import java.util.stream.IntStream;

/**
 * When the machines of a season work, as the timeline knows it: seconds since the season's first midnight; days count from the
 * season's first day. Planters, rigs and fields are indices in the season's order.
 */
public final class WorkingTime {
    /** Seconds of a day. */
    public static final int DAY_S = Calendars.DAY_S;

    private final SeasonTables tables;
    private final Calendar anyRig;

    public WorkingTime(CompiledSeason season) {
        tables = season.tables();
        anyRig = Calendar.union(
                IntStream.range(0, tables.rigs().count())
                        .mapToObj(tables.rigs()::hours)
                        .toList(),
                season.days() * DAY_S);
    }

    /** A planter's working hours between two times, without what its days begin and end with, s. */
    public int planterS(int planter, int from, int to) {
        return tables.planters().hours(planter).work(from, to);
    }

    /** A rig's working hours between two times, without what its days begin and end with, s. */
    public int rigS(int rig, int from, int to) {
        return tables.rigs().hours(rig).work(from, to);
    }

    /** Hours between two times in which a planter is there, with what its days begin and end with, s. */
    public int planterThereS(int planter, int from, int to) {
        return tables.planters().machineHours(planter).there().work(from, to);
    }

    /** The same of a rig, s. */
    public int rigThereS(int rig, int from, int to) {
        return tables.rigs().machineHours(rig).there().work(from, to);
    }

    /** Seconds between two times at which a water point is open while any rig works. */
    public int drawableS(int point, int from, int to) {
        int seconds = 0;
        for (int i = 0; i < anyRig.periods(); i++) {
            seconds +=
                    tables.water().hours(point).work(Math.max(from, anyRig.startOf(i)), Math.min(to, anyRig.endOf(i)));
        }
        return seconds;
    }

    /** The first moment at or after {@code t} in a planter's hours; larger than any time of the season when there is none. */
    public int planterFrom(int planter, int t) {
        return tables.planters().hours(planter).next(t);
    }

    /** The end of a planter's last working hours up to {@code t}; -1 when it has none. */
    public int planterUntil(int planter, int t) {
        return tables.planters().hours(planter).latest(t, 1);
    }

    /**
     * The first moment of a day at which a planter may plant on soil like the field's, whatever the field's window; the end of the
     * day when there is none.
     */
    public int plantableFrom(int planter, int field, int day) {
        return Math.min(tables.planters().plantable(planter, field).next(day * DAY_S), (day + 1) * DAY_S);
    }

    /** The end of the last time of a day at which a planter may plant on such soil; the start of the day when there is none. */
    public int plantableUntil(int planter, int field, int day) {
        return Math.max(tables.planters().plantable(planter, field).latest((day + 1) * DAY_S, 1), day * DAY_S);
    }

    /** Seconds of a day at which a planter may plant on such soil. */
    public int plantableS(int planter, int field, int day) {
        return tables.planters().plantable(planter, field).work(day * DAY_S, (day + 1) * DAY_S);
    }
}

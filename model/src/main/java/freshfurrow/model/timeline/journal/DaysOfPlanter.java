package freshfurrow.model.timeline.journal;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.season.SeasonTime;
import freshfurrow.model.timeline.calendar.MachineHours;
import freshfurrow.model.timeline.tables.Beginning;
import freshfurrow.model.timeline.tables.SeasonTables;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;

/**
 * The flushes with which a planter ends the days on which it applied mix, among what it does: right after the last work of the day. Its
 * hours leave room for them.
 */
final class DaysOfPlanter {
    private static final int NONE = Integer.MIN_VALUE;

    private final SeasonTime time;
    private final MachineHours hours;
    private final int flushS;
    private final List<Activity> all = new ArrayList<>();

    // the day on which mix was applied that is not flushed out yet
    private int day;
    // the last work, and where it stands in the list
    private int workEnd;
    private int works;
    private String at;

    private DaysOfPlanter(SeasonTables tables, int planter) {
        Beginning beginning = tables.beginning();
        time = tables.season().time();
        hours = tables.planters().machineHours(planter);
        flushS = tables.planters().flushS(planter);
        day = beginning.linesRecipe(planter) == Beginning.CLEAN ? NONE : hours.day(beginning.linesAppliedS(planter));
        workEnd = beginning.planterFreeS(planter);
        at = tables.places().id(beginning.planterPlace(planter));
    }

    static List<Activity> with(SeasonTables tables, int planter, List<Activity> work) {
        return tables.planters().flushS(planter) == 0 ? work : new DaysOfPlanter(tables, planter).with(work);
    }

    private List<Activity> with(List<Activity> work) {
        for (Activity activity : work) {
            if (activity.isWork()) {
                if (hours.day(seconds(activity.start())) != day) {
                    endDay();
                }
                if (activity instanceof Activity.Plant) {
                    day = hours.day(seconds(activity.start()));
                } else if (activity instanceof Activity.Flush) {
                    day = NONE;
                }
            }
            all.add(activity);
            if (activity.isWork()) {
                workEnd = seconds(activity.end());
                works = all.size();
                at = activity.endsAt();
            }
        }
        endDay();
        return all;
    }

    /** Before what it waits for after its last work. */
    private void endDay() {
        if (day != NONE) {
            boolean hasPlanted = works > 0;
            int start = hours.endOfDayStart(workEnd, flushS, day);
            if (hasPlanted || hours.hasLeft(workEnd, flushS, day)) {
                all.add(works, new Activity.Flush(time.at(start), time.at(start + flushS), at));
            }
            day = NONE;
        }
    }

    private int seconds(LocalDateTime moment) {
        return (int) time.seconds(moment);
    }
}

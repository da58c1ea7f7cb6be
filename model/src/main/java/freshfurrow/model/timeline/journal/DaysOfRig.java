package freshfurrow.model.timeline.journal;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.season.KeptTime;
import freshfurrow.model.season.SeasonTime;
import freshfurrow.model.timeline.calendar.MachineHours;
import freshfurrow.model.timeline.tables.SeasonTables;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;

/**
 * What a rig begins and ends its days with, around what it does: it is set up right before the first work of a day and closed up right
 * after the last. Its hours leave room for both.
 */
final class DaysOfRig {
    private static final int NONE = Integer.MIN_VALUE;

    private final SeasonTime time;
    private final MachineHours hours;
    private final KeptTime kept;
    private final List<Activity> all = new ArrayList<>();

    // the day that is begun and not ended
    private int day;
    private int free;
    private String at;

    private DaysOfRig(SeasonTables tables, int rig) {
        time = tables.season().time();
        hours = tables.rigs().machineHours(rig);
        kept = tables.season().rigs().get(rig).kept();
        day = tables.beginning().rigSetUpS(rig).stream()
                .map(hours::day)
                .findFirst()
                .orElse(NONE);
        free = tables.beginning().rigFreeS(rig);
        at = tables.places().id(tables.beginning().rigPlace(rig));
    }

    static List<Activity> with(SeasonTables tables, int rig, List<Activity> work) {
        return tables.season().rigs().get(rig).kept().equals(KeptTime.NONE)
                ? work
                : new DaysOfRig(tables, rig).with(work);
    }

    private List<Activity> with(List<Activity> work) {
        for (Activity activity : work) {
            int start = seconds(activity.start());
            int end = seconds(activity.end());
            if (start < end) {
                if (hours.day(start) != day) {
                    closeUp();
                    setUp(activity);
                    day = hours.day(start);
                }
                free = end;
            }
            all.add(activity);
            at = activity.endsAt();
        }
        closeUp();
        return all;
    }

    private void setUp(Activity first) {
        if (kept.firstS() > 0) {
            int end = hours.there().latest(seconds(first.start()), kept.firstS());
            all.add(new Activity.SetUp(time.at(end - kept.firstS()), time.at(end), first.at()));
        }
    }

    private void closeUp() {
        if (day != NONE && kept.lastS() > 0) {
            if (hours.hasLeft(free, kept.lastS(), day)) {
                int start = hours.there().earliest(free, kept.lastS());
                all.add(new Activity.CloseUp(time.at(start), time.at(start + kept.lastS()), at));
            }
        }
    }

    private int seconds(LocalDateTime moment) {
        return (int) time.seconds(moment);
    }
}

package freshfurrow.model.timeline;

import static freshfurrow.model.timeline.calendar.Calendar.NEVER;

import freshfurrow.model.season.Machine;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.calendar.Calendar;
import freshfurrow.model.timeline.calendar.Calendars;
import java.time.Duration;
import java.time.LocalDateTime;

/** The hours of a machine as the timeline knows them, its outages left out. */
public final class HoursOfWork {
    private HoursOfWork() {}

    /** When a machine has worked for so long from a moment on; the season's end when it never will have. */
    public static LocalDateTime after(Season season, Machine machine, LocalDateTime from, Duration work) {
        Calendar hours = new Calendars(season).machine(machine).work();
        int s = (int) season.time().seconds(from);
        long leftS = work.toSeconds();
        while (leftS > 0 && hours.next(s) < NEVER) {
            int start = hours.next(s);
            int worked = (int) Math.min(leftS, hours.endOf(hours.periodAt(start)) - start);
            s = start + worked;
            leftS -= worked;
        }
        return leftS > 0 ? season.end() : season.time().at(s);
    }
}

package freshfurrow.model.timeline;

import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.SeasonTime;
import freshfurrow.model.timeline.calendar.Calendars;
import java.time.LocalDateTime;
import java.util.List;

/**
 * A time in which rain keeps planters off the fields of a drainage class.
 *
 * @param from when the rain begins, or the season
 * @param to midnight before the first day on which such fields bear a planter again, or the season's end
 */
public record WetGround(LocalDateTime from, LocalDateTime to) {

    /** The times in which the timeline plants no field of that drainage class, in order and apart from one another. */
    public static List<WetGround> of(Season season, Drainage drainage) {
        SeasonTime time = season.time();
        return new Calendars(season)
                .closures(drainage).stream()
                        .map(closure -> new WetGround(time.at(closure[0]), time.at(closure[1])))
                        .toList();
    }
}

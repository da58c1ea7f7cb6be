package freshfurrow.model.timeline;

import freshfurrow.model.season.FieldGround;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.SeasonTime;
import freshfurrow.model.timeline.calendar.Calendars;
import java.time.LocalDateTime;
import java.util.List;

/**
 * A time in which a field's ground does not bear machines.
 *
 * @param from when the rain begins or somebody finds the ground unfit, or the season begins
 * @param to when the ground bears machines again, or the season's end
 */
public record WetGround(LocalDateTime from, LocalDateTime to) {

    /** The times in which the timeline plants no field of such ground, in order and apart from one another. */
    public static List<WetGround> of(Season season, FieldGround ground) {
        SeasonTime time = season.time();
        return new Calendars(season)
                .closures(ground).stream()
                        .map(closure -> new WetGround(time.at(closure[0]), time.at(closure[1])))
                        .toList();
    }
}

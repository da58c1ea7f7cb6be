package freshfurrow.model.timeline.tables;

import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Standing;
import freshfurrow.model.timeline.calendar.Calendars;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** By whom and on which day fields were promised to be begun. */
public final class Promised {
    private static final int NOTHING = -1;

    private final int[] planter;
    private final int[] day;

    Promised(Season season) {
        planter = new int[season.fields().size()];
        day = new int[planter.length];
        Arrays.fill(planter, NOTHING);
        season.standing().map(Standing::promised).ifPresent(promises -> take(season, promises));
    }

    private void take(Season season, Map<String, Standing.Promise> promises) {
        List<String> planters =
                season.applicators().stream().map(Applicator::id).toList();
        for (int f = 0; f < planter.length; f++) {
            Field field = season.fields().get(f);
            Standing.Promise promise = promises.get(field.id());
            if (promise != null) {
                planter[f] = planters.indexOf(promise.planter());
                day[f] = (int) ChronoUnit.DAYS.between(season.first(), promise.day());
            }
        }
    }

    /** The planter that a field was promised to; -1 when it was promised to none of the season. */
    public int planter(int field) {
        return planter[field];
    }

    /** Whether a field that a planter begins at {@code s} was promised to be begun otherwise. */
    public boolean isBrokenBy(int byPlanter, int field, int s) {
        return planter[field] != NOTHING && (planter[field] != byPlanter || day[field] != s / Calendars.DAY_S);
    }
}

package freshfurrow.desk.season;

import freshfurrow.app.input.GivenPlan;
import freshfurrow.app.input.GivenSeason;
import freshfurrow.app.input.SeasonClock;
import java.nio.file.Path;

/**
 * The season on the desk.
 *
 * @param clock what time it is there
 */
public record DeskSeason(GivenSeason given, SeasonClock clock) {
    /** Where its plans are kept. */
    public Path planFolder() {
        return given.folder().resolve("plan");
    }

    /** The plan that is followed, if there is one. */
    public GivenPlan plan() {
        return new GivenPlan(planFolder().resolve(GivenPlan.FILE_NAME));
    }
}

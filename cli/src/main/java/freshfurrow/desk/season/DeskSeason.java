package freshfurrow.desk.season;

import freshfurrow.app.input.GivenPlan;
import freshfurrow.app.input.GivenSeason;
import freshfurrow.app.input.SeasonClock;
import freshfurrow.app.input.SeasonOfPlan;
import freshfurrow.app.output.PlanArchive;
import java.nio.file.Path;
import java.util.Optional;

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

    /** The season, as the one that its plans were made from. */
    public SeasonOfPlan ofPlan() {
        return new SeasonOfPlan(Optional.of(given.path()), given.variants());
    }

    /** The text of the plan that is followed, by which it is seen that it is another by now; empty when there is none. */
    public String planText() {
        return PlanArchive.own(planFolder()).newestText().orElse("");
    }
}

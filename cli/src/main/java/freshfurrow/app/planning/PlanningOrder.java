package freshfurrow.app.planning;

import freshfurrow.app.input.GivenSeason;
import freshfurrow.solver.PlanningOptions;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A season to be planned.
 *
 * @param folder where the plan goes; without it, the folder {@code plan} beside the season file
 * @param options of which the time is that of all, reading and writing included
 * @param withPage whether the plan's page is written beside it
 * @param force whether a plan that is there may be replaced
 */
public record PlanningOrder(
        GivenSeason season, Optional<Path> folder, PlanningOptions options, boolean withPage, boolean force) {}

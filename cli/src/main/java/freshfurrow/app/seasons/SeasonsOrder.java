package freshfurrow.app.seasons;

import freshfurrow.solver.PlanningOptions;
import java.nio.file.Path;

/**
 * Many seasons to be planned.
 *
 * @param list a folder that the seasons are in, or a file that lists them
 * @param slice of the list that is meant
 * @param options for each season
 * @param withPage whether each plan's page is written beside it
 * @param force whether plans that are there may be replaced
 */
public record SeasonsOrder(Path list, Slice slice, PlanningOptions options, boolean withPage, boolean force) {}

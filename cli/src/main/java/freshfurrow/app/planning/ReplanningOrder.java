package freshfurrow.app.planning;

import freshfurrow.app.input.GivenPlan;
import freshfurrow.app.input.GivenSeason;
import freshfurrow.model.progress.News;
import freshfurrow.solver.PlanningOptions;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Optional;

/**
 * A season to be planned again.
 *
 * @param followed the plan that was followed
 * @param changed whether the season's files may have changed since that plan was made, as long as it still names all that is there
 * @param now from when on to plan, local time; without it, the clock if it is in the season, else the latest of what is told
 * @param log the season's log; without it, the one beside the season file, if there is one
 * @param onlyLogged whether nothing counts as carried out that is not in the log
 * @param options of which the time is that of all, reading and writing included
 * @param folder where the plan goes; without it, the folder of the plan that was followed
 * @param withPage whether the plan's page is written beside it
 * @param force whether a plan or page may be replaced that is not of the plan that was followed
 */
public record ReplanningOrder(
        GivenSeason season,
        GivenPlan followed,
        boolean changed,
        Optional<LocalDateTime> now,
        News news,
        Optional<Path> log,
        boolean onlyLogged,
        PlanningOptions options,
        Optional<Path> folder,
        boolean withPage,
        boolean force) {}

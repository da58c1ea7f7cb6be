package freshfurrow.solver.lived;

import freshfurrow.model.season.Costs;
import freshfurrow.model.season.Season;
import java.util.Optional;

/**
 * A season to be compared with others.
 *
 * @param name as people know it
 * @param sha256 of all files it was read from, lower-case hex
 */
public record Candidate(String name, Season season, Optional<Costs> costs, String sha256) {}

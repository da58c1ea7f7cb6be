package freshfurrow.cli.words;

import freshfurrow.model.plan.Plan;
import java.nio.file.Path;

/** What a plan was made from instead of the season that it is held against. */
public final class OriginText {
    private OriginText() {}

    /**
     * A sentence without its stop.
     *
     * @param plan its file
     * @param season name of the season that it is held against
     * @param source what it was made from
     */
    public static String clause(Path plan, String season, Plan.SeasonSource source) {
        return plan
                + (season.equals(source.name())
                        ? " was made from a " + source.file() + " that differs from '" + season
                                + "' as it is now, or with other variants (different checksum)"
                        : " is a plan of '" + source.name() + "', not of '" + season + "' (different checksum)");
    }
}

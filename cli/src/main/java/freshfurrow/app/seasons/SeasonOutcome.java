package freshfurrow.app.seasons;

import freshfurrow.app.planning.Planned;
import freshfurrow.app.refusal.Refusal;
import java.nio.file.Path;

/** What came of one season of many. */
public sealed interface SeasonOutcome {
    /** The season file, or its folder. */
    Path season();

    /** It was planned. */
    record Made(Path season, Planned planned) implements SeasonOutcome {}

    /** It had a plan already that was made from it as it is now. */
    record Kept(Path season) implements SeasonOutcome {}

    /** It has a plan that was made from other files than it has now, and that nobody has asked to replace. */
    record Outdated(Path season, Path plan) implements SeasonOutcome {}

    /** It could not be planned. */
    record NotPlanned(Path season, Refusal refusal) implements SeasonOutcome {}
}

package freshfurrow.app.planning;

import freshfurrow.app.input.GivenSeason;
import freshfurrow.app.output.PlanArchive;
import freshfurrow.app.refusal.PlanningRefusal;
import freshfurrow.app.refusal.Refused;
import java.nio.file.Path;
import java.util.Optional;

/** A plan that was proposed becomes the one that is followed; the one before it is kept. */
public final class PlanTaking {
    private PlanTaking() {}

    /**
     * Makes it the newest plan of its folder.
     *
     * @param given the season it was made for
     * @param before what {@link PlanArchive#newestText} said of the plan that it was held against
     * @return where it is kept
     * @throws Refused when the season or that plan is another by now, or it cannot be written; then all is as it was
     */
    public static Path take(ProposedPlan proposed, GivenSeason given, Path folder, Optional<String> before) {
        if (!given.read().sha256().equals(proposed.plan().season().sha256())) {
            throw new Refused(new PlanningRefusal.SeasonChanged());
        }
        return PlanArchive.own(folder).addAfter(before, proposed.text(), proposed.page());
    }
}

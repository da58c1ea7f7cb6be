package freshfurrow.app.input;

import freshfurrow.app.refusal.InputRefusal;
import freshfurrow.app.refusal.Refused;
import freshfurrow.app.refusal.SeasonPart;
import java.util.List;
import java.util.Optional;

/** Which of a season's planters, rigs, recipes, fields or lots is meant. */
public final class ChosenPart {
    private ChosenPart() {}

    /**
     * Its index: the only one there is when none is named.
     *
     * @param ids of those that the season has
     * @throws Refused when there is no such one, or none is named where there are several
     */
    public static int among(SeasonPart part, Optional<String> id, List<String> ids) {
        if (id.isPresent()) {
            int index = ids.indexOf(id.get());
            if (index < 0) {
                throw new Refused(new InputRefusal.Unknown(part, id.get(), ids));
            }
            return index;
        }
        if (ids.size() != 1) {
            throw new Refused(new InputRefusal.Undecided(part, ids));
        }
        return 0;
    }
}

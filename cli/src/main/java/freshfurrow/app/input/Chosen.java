package freshfurrow.app.input;

import freshfurrow.cli.command.Refusal;
import java.util.List;
import java.util.Optional;

/** Which of a season's planters, rigs or recipes is meant. */
public final class Chosen {
    private Chosen() {}

    /**
     * Its index: the only one there is when none is named.
     *
     * @param what such as {@code planter}, which is the option's name too
     * @throws Refusal when there is no such one, or none is named where there are several
     */
    public static int among(String what, Optional<String> id, List<String> ids) {
        if (id.isPresent()) {
            int index = ids.indexOf(id.get());
            if (index < 0) {
                throw new Refusal("--" + what + ": the season has no " + what + " " + id.get() + "; it has "
                        + String.join(", ", ids));
            }
            return index;
        }
        if (ids.size() != 1) {
            throw new Refusal("The season has " + ids.size() + " " + what + "s: " + String.join(", ", ids)
                    + "; choose one with --" + what);
        }
        return 0;
    }
}

package freshfurrow.app.planning;

import freshfurrow.cli.command.Interruption;
import freshfurrow.cli.command.PageCommand;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;

/** The page that is written with a plan. */
public final class PlanPage {
    /** Longer than any page takes on a quiet machine, once the program is told to end. */
    private static final long GRACE_MS = 1_000;

    private static final long GRACE_MS_PER_FIELD = 1;

    private PlanPage() {}

    /**
     * The page made; empty when the program was told to end and making it takes longer than a second or so from then on.
     *
     * @param fields of its season
     */
    public static Optional<String> inTime(Interruption interruption, int fields, Supplier<String> html) {
        return interruption.inTime(
                interruption.stop(), GRACE_MS + GRACE_MS_PER_FIELD * fields, () -> Optional.of(html.get()));
    }

    /** To tell of a page that was not made. */
    public static String missing(Path plan) {
        return "Stopped before " + PageCommand.FILE_NAME + " was made: if there is one, it is of another plan;"
                + " make it with 'freshfurrow page " + plan + " --force'.";
    }
}

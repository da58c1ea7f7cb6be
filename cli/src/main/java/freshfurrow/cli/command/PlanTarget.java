package freshfurrow.cli.command;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanFile;
import freshfurrow.model.plan.WholeFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;

/** Where a plan is to be written. */
final class PlanTarget {
    private final Path folder;

    private PlanTarget(Path folder) {
        this.folder = folder;
    }

    /**
     * Makes sure, before time goes into planning, that the plan can be written. Makes no folder yet.
     *
     * @param force whether a plan that is already there may be replaced
     * @throws Refusal when it cannot
     */
    static PlanTarget in(Path folder, boolean force) {
        PlanTarget target = new PlanTarget(folder);
        if (!force && Files.exists(target.file(), LinkOption.NOFOLLOW_LINKS)) {
            throw new Refusal(target.file() + ": there is a plan already, so nothing was planned;"
                    + " replace it with --force, or write elsewhere with --out DIR");
        }
        target.tryOut();
        return target;
    }

    Path file() {
        return folder.resolve(PlanArgument.FILE_NAME);
    }

    /** @throws Refusal when it cannot be written; then what was there is still there */
    void write(Plan plan) {
        try {
            Files.createDirectories(folder);
            WholeFile.write(file(), PlanFile.toJson(plan));
        } catch (IOException e) {
            throw cannotWrite(e, "the plan is lost");
        }
    }

    /** Permissions alone do not tell, as on a read-only disk, so a file is made and taken away again. */
    private void tryOut() {
        Path there = folder.toAbsolutePath();
        while (there.getParent() != null && !Files.exists(there, LinkOption.NOFOLLOW_LINKS)) {
            there = there.getParent();
        }
        try {
            Files.delete(Files.createTempFile(there, ".freshfurrow", ".tmp"));
        } catch (IOException e) {
            throw cannotWrite(e, "nothing was planned");
        }
    }

    private Refusal cannotWrite(IOException failure, String consequence) {
        return new Refusal(file() + ": cannot be written (" + Failures.reason(failure) + "), so " + consequence
                + "; choose another folder with --out DIR");
    }
}

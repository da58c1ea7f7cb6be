package freshfurrow.cli.command;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanFile;
import freshfurrow.model.plan.WholeFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.stream.Stream;

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
     * @param companions names of files that will be written beside the plan
     * @throws Refusal when it cannot
     */
    static PlanTarget in(Path folder, boolean force, String... companions) {
        PlanTarget target = new PlanTarget(folder);
        Stream.concat(Stream.of(PlanArgument.FILE_NAME), Stream.of(companions))
                .map(folder::resolve)
                .filter(file -> !force && Files.exists(file, LinkOption.NOFOLLOW_LINKS))
                .findFirst()
                .ifPresent(PlanTarget::refuseToReplace);
        target.tryOut();
        return target;
    }

    Path file() {
        return folder.resolve(PlanArgument.FILE_NAME);
    }

    private static void refuseToReplace(Path file) {
        throw new Refusal(file + ": there is a plan already, so nothing was planned;"
                + " replace it with --force, or write elsewhere with --out DIR");
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

    /**
     * Writes a file beside the plan, after the plan.
     *
     * @throws Refusal when it cannot be written; the plan is there all the same
     */
    void writeCompanion(String name, String text) {
        Path file = folder.resolve(name);
        try {
            WholeFile.write(file, text);
        } catch (IOException e) {
            throw new Refusal(
                    file + ": cannot be written (" + Failures.reason(e) + "); the plan itself is in " + file());
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

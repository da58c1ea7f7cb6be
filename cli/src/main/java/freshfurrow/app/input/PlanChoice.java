package freshfurrow.app.input;

import freshfurrow.cli.command.Refusal;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanFile;
import freshfurrow.model.plan.PlanFileException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A plan that is already written. */
public final class PlanChoice {
    public static final String FILE_NAME = "plan.json";

    private PlanChoice() {}

    @FunctionalInterface
    private interface Reader {
        Plan read(Path file) throws PlanFileException;
    }

    /**
     * @param plan a plan file, or a folder that holds plan.json
     * @throws Refusal when it cannot be read
     */
    public static Plan read(Path plan) {
        return read(plan, PlanFile::read);
    }

    /**
     * A plan of which only the form is right.
     *
     * @param plan a plan file, or a folder that holds plan.json
     * @throws Refusal when it cannot be read
     */
    public static Plan readToAudit(Path plan) {
        return read(plan, PlanFile::readToAudit);
    }

    private static Plan read(Path plan, Reader reader) {
        try {
            return reader.read(file(plan));
        } catch (PlanFileException e) {
            throw new Refusal(String.valueOf(e.getMessage()));
        }
    }

    /**
     * A plan as the file that is to hold it will have it, so that a page made of it is the one that {@code page} makes.
     *
     * @throws Refusal when it could not be read
     */
    public static Plan asWritten(Path file, String text) {
        try {
            return PlanFile.fromJson(file, text);
        } catch (PlanFileException e) {
            throw new Refusal(String.valueOf(e.getMessage()));
        }
    }

    /** The plan file that is meant by a plan file or a folder that holds plan.json. */
    public static Path file(Path plan) {
        return Files.isDirectory(plan) ? plan.resolve(FILE_NAME) : plan;
    }
}

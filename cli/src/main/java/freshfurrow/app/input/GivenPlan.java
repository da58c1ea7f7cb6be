package freshfurrow.app.input;

import freshfurrow.app.refusal.InputRefusal;
import freshfurrow.app.refusal.Refused;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanFile;
import freshfurrow.model.plan.PlanFileException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A plan that is already written.
 *
 * @param path a plan file, or a folder that holds plan.json
 */
public record GivenPlan(Path path) {
    public static final String FILE_NAME = "plan.json";

    @FunctionalInterface
    private interface Reader {
        Plan read(Path file) throws PlanFileException;
    }

    /** The plan file that is meant. */
    public Path file() {
        return Files.isDirectory(path) ? path.resolve(FILE_NAME) : path;
    }

    /**
     * The plan, whole.
     *
     * @throws Refused when it cannot be read
     */
    public Plan read() {
        return read(PlanFile::read);
    }

    /**
     * A plan of which only the form is right.
     *
     * @throws Refused when it cannot be read
     */
    public Plan readToAudit() {
        return read(PlanFile::readToAudit);
    }

    /**
     * A plan as the file that is to hold it will have it, so that a page made of it is the one that is made of the file.
     *
     * @throws Refused when it could not be read
     */
    public static Plan asWritten(Path file, String text) {
        return new GivenPlan(file).read(there -> PlanFile.fromJson(there, text));
    }

    private Plan read(Reader reader) {
        try {
            return reader.read(file());
        } catch (PlanFileException e) {
            throw unreadable(e);
        }
    }

    static Refused unreadable(PlanFileException e) {
        return new Refused(new InputRefusal.UnreadablePlan(String.valueOf(e.getMessage())));
    }
}

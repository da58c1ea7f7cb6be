package freshfurrow.model.plan;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** The plan file: JSON of the format {@value #FORMAT}, SI numbers, local date-times with seconds. */
public final class PlanFile {
    /** The first year that a time in a plan may be of. */
    public static final int FIRST_YEAR = 2000;

    /** The last year that a time in a plan may be of. */
    public static final int LAST_YEAR = 2100;

    /** What the key {@code format} of a plan file says. */
    public static final String FORMAT = "freshfurrow-plan/1";

    private PlanFile() {}

    /**
     * Reads a plan file that is whole: in the form that {@link #readToAudit} asks for, the loads, batches and machines that it names are in it, no
     * load, batch, listed or unserved field is there twice, every batch that is made goes into a load, no amount is below zero, no tank or bucket of no size, nothing ends before it starts, machines do what their kind
     * can do, and all times are within 407 days of their middle. Who has its season checks it with {@link PlanOfSeason} as well.
     *
     * @throws PlanFileException when there is no such file or it is not a plan file in whole; its message is one line
     */
    public static Plan read(Path file) throws PlanFileException {
        Plan plan = readToAudit(file);
        WholePlan.check(file, plan);
        return plan;
    }

    /**
     * Reads a plan file of which only the form is right, so that an audit can tell all that is wrong with the rest. The form is strict: no
     * unknown key, and none missing but those that came to the format later ({@code season.clock}, {@code season.names}, {@code season.clockChanges} and a rig's {@code nurseTankL}, {@code
     * payloadKg} and {@code bucketKg}), and {@code start}, which only plans of what is left of a season have; where
     * that has a checksum, nothing in it was changed. Less than 64 MB; figures of
     * 100,000,000,000 at most, counts of 10,000,000, texts of 1,000 letters, all of which can be seen, and years from 2000 to 2100; the season's
     * file is a bare name.
     *
     * @throws PlanFileException when there is no such file or its form is wrong; its message is one line
     */
    public static Plan readToAudit(Path file) throws PlanFileException {
        return PlanFromJson.read(file);
    }

    /** Whether a text that {@link #toJson} gave is not so long that {@link #read} would refuse it. */
    public static boolean isReadable(String json) {
        return json.getBytes(StandardCharsets.UTF_8).length < PlanFromJson.LARGEST_MB << 20;
    }

    /**
     * The plan that the text of a plan file says, as {@link #read} would have it of a file that holds the text.
     *
     * @param file what is to hold the text, for problems to name
     * @throws PlanFileException when it is not a plan file in whole
     */
    public static Plan fromJson(Path file, String text) throws PlanFileException {
        return PlanFromJson.read(file, text);
    }

    /**
     * A plan as the text of a plan file, ending in a newline: one activity, load, batch and unserved field a line, areas
     * in ha to 6 decimals, all other figures to 3. The same plan always gives the same text.
     *
     * @throws IllegalArgumentException when a figure of the plan is not finite
     */
    public static String toJson(Plan plan) {
        return JsonLayout.text(PlanToJson.tree(plan));
    }
}

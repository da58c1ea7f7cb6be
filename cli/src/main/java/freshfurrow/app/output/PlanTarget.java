package freshfurrow.app.output;

import freshfurrow.app.input.PlanChoice;
import freshfurrow.cli.command.PageCommand;
import freshfurrow.model.files.IfThere;
import freshfurrow.model.files.NewFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Where a plan is to be written, with its page. */
public final class PlanTarget {
    private static final OutFiles BEFORE = new OutFiles("nothing was planned", "write elsewhere with --out DIR");
    private static final OutFiles AFTER =
            new OutFiles("the new plan was not written", "run 'freshfurrow plan' again with another --out DIR");

    private final Path folder;
    private final IfThere ifThere;

    private PlanTarget(Path folder, IfThere ifThere) {
        this.folder = folder;
        this.ifThere = ifThere;
    }

    /**
     * Makes sure, before time goes into planning, that the plan can be written. Makes no folder yet.
     *
     * @param companions names of files that will be written beside the plan
     * @throws Refusal when it cannot
     */
    public static PlanTarget in(Path folder, IfThere ifThere, String... companions) {
        PlanTarget target = new PlanTarget(folder, ifThere);
        BEFORE.refuseObstructed(
                Stream.concat(Stream.of(PlanChoice.FILE_NAME), Stream.of(companions))
                        .map(folder::resolve)
                        .toList(),
                ifThere);
        BEFORE.tryOut(folder);
        return target;
    }

    public Path file() {
        return folder.resolve(PlanChoice.FILE_NAME);
    }

    /**
     * Writes the plan and its page, or neither.
     *
     * @throws Refusal when one cannot be written, or has come there since; then what was there is still there
     */
    public void write(String plan, Optional<String> page) {
        List<NewFile> files = new ArrayList<>();
        files.add(NewFile.of(file(), plan, ifThere));
        page.ifPresent(text -> files.add(NewFile.of(folder.resolve(PageCommand.FILE_NAME), text, ifThere)));
        AFTER.writeAll(files);
    }
}

package freshfurrow.app.output;

import freshfurrow.app.input.GivenPlan;
import freshfurrow.app.refusal.OutputRefusal.Unwritten;
import freshfurrow.app.refusal.Refused;
import freshfurrow.model.files.IfThere;
import freshfurrow.model.files.NewFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where a plan is to be written, with its page. */
public final class PlanTarget {
    public static final String PAGE_NAME = "plan.html";

    private static final OutFiles BEFORE = new OutFiles(Unwritten.PLANNING);
    private static final OutFiles AFTER = new OutFiles(Unwritten.PLAN);

    private final Path folder;
    private final IfThere ifThere;

    private PlanTarget(Path folder, IfThere ifThere) {
        this.folder = folder;
        this.ifThere = ifThere;
    }

    /**
     * Makes sure, before time goes into planning, that the plan can be written. Makes no folder yet.
     *
     * @param withPage whether a page comes with the plan
     * @throws Refused when it cannot
     */
    public static PlanTarget in(Path folder, IfThere ifThere, boolean withPage) {
        PlanTarget target = new PlanTarget(folder, ifThere);
        BEFORE.refuseObstructed(withPage ? List.of(target.file(), target.page()) : List.of(target.file()), ifThere);
        BEFORE.tryOut(folder);
        return target;
    }

    public Path file() {
        return folder.resolve(GivenPlan.FILE_NAME);
    }

    private Path page() {
        return folder.resolve(PAGE_NAME);
    }

    /**
     * Writes the plan and its page, or neither.
     *
     * @throws Refused when one cannot be written, or has come there since; then what was there is still there
     */
    public void write(String plan, Optional<String> page) {
        List<NewFile> files = new ArrayList<>();
        files.add(NewFile.of(file(), plan, ifThere));
        page.ifPresent(text -> files.add(NewFile.of(page(), text, ifThere)));
        AFTER.writeAll(files);
    }
}

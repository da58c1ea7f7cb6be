package freshfurrow.app.plan;

import freshfurrow.app.input.GivenPlan;
import freshfurrow.app.input.SeasonOfPlan;
import freshfurrow.app.output.OutFiles;
import freshfurrow.app.output.PlanTarget;
import freshfurrow.app.refusal.Refused;
import freshfurrow.cli.page.SeasonPage;
import freshfurrow.model.files.IfThere;
import freshfurrow.model.files.NewFile;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** The page of a plan. */
public final class PageOfPlan {
    private PageOfPlan() {}

    /**
     * Writes it.
     *
     * @param out the file to write; without it, {@code plan.html} beside the plan
     * @param force whether a file that is there may be replaced
     * @return the file that was written
     * @throws Refused when plan or season cannot be used, or the page cannot be written
     */
    public static Path write(GivenPlan given, SeasonOfPlan season, Optional<Path> out, boolean force) {
        OpenedPlan opened = OpenedPlan.of(given, season);
        String page = html(opened);
        Path file = out.orElseGet(() -> opened.file().resolveSibling(PlanTarget.PAGE_NAME));
        OutFiles.MADE.writeAll(List.of(NewFile.of(file, page, IfThere.replaceIf(force))));
        return file;
    }

    /**
     * Its text.
     *
     * @throws Refused when plan or season cannot be used
     */
    public static String html(GivenPlan given, SeasonOfPlan season) {
        return html(OpenedPlan.of(given, season));
    }

    private static String html(OpenedPlan opened) {
        return SeasonPage.html(opened.season(), opened.plan());
    }
}

package freshfurrow.app.springs;

import freshfurrow.app.output.OutFiles;
import freshfurrow.app.refusal.Refused;
import freshfurrow.cli.compare.ComparisonFile;
import freshfurrow.cli.page.ComparisonPage;
import freshfurrow.model.compare.ComparedSprings;
import freshfurrow.model.files.IfThere;
import freshfurrow.model.files.NewFile;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;

/** Where a comparison is written, with its page. */
final class ComparisonFiles {
    private final Path folder;
    private final IfThere ifThere;

    ComparisonFiles(Path folder, boolean force) {
        this.folder = folder;
        ifThere = IfThere.replaceIf(force);
    }

    /**
     * The comparison, made when it can be written, and written.
     *
     * @throws Refused when it cannot be written
     */
    Compared write(Supplier<ComparedSprings> comparison) {
        Path file = folder.resolve(SeasonComparison.FILE_NAME);
        Path page = folder.resolve(SeasonComparison.PAGE_NAME);
        OutFiles.MADE.refuseObstructed(List.of(file, page), ifThere);
        OutFiles.MADE.tryOut(folder);
        ComparedSprings springs = comparison.get();
        OutFiles.MADE.writeAll(List.of(
                NewFile.of(file, ComparisonFile.toJson(springs), ifThere),
                NewFile.of(page, ComparisonPage.html(springs), ifThere)));
        return new Compared(springs, file);
    }
}

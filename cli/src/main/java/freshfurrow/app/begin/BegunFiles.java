package freshfurrow.app.begin;

import freshfurrow.app.input.GivenSeason;
import freshfurrow.app.output.OutFiles;
import freshfurrow.model.files.IfThere;
import freshfurrow.model.files.NewFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * Where a season is begun.
 *
 * @param season file of the season, which is not there yet
 */
public record BegunFiles(Path season) {
    /** In a folder, whether it is there or not, or at the file that was named. */
    public static BegunFiles of(GivenSeason given) {
        return new BegunFiles(given.file());
    }

    /** Whether there is no season yet in the folder that was named, and one could be begun there. */
    public static boolean canBegin(GivenSeason given) {
        BegunFiles files = of(given);
        return given.variants().isEmpty()
                && files.folder().equals(given.path().toAbsolutePath())
                && !Files.exists(files.season)
                && (Files.isDirectory(files.folder()) || Files.isDirectory(parent(files.folder())));
    }

    /**
     * Writes the season with the file of its fields, or nothing.
     *
     * @return the files, as they were written
     * @throws freshfurrow.app.refusal.Refused when one of them is there already, or cannot be written
     */
    public List<Path> write(NewSeason begun) {
        Path fields = folder().resolve(begun.fieldsName());
        OutFiles.BEGUN.writeAll(List.of(
                NewFile.of(season, begun.text(), IfThere.KEEP), NewFile.of(fields, begun.fieldsText(), IfThere.KEEP)));
        return List.of(season, fields);
    }

    /**
     * Makes sure, before anything is asked, that a season can be begun there.
     *
     * @throws freshfurrow.app.refusal.Refused when it cannot
     */
    public void refuseObstructed() {
        OutFiles.BEGUN.refuseObstructed(
                List.of(season, folder().resolve("fields.csv"), folder().resolve("fields.geojson")), IfThere.KEEP);
        OutFiles.BEGUN.tryOut(folder());
    }

    private Path folder() {
        return parent(season);
    }

    private static Path parent(Path path) {
        Path absolute = path.toAbsolutePath();
        Path parent = absolute.getParent();
        return parent == null ? absolute : parent;
    }
}

package freshfurrow.model.read;

import freshfurrow.model.read.tree.FileProblem;
import freshfurrow.model.read.tree.MergePatch;
import freshfurrow.model.read.tree.Node;
import freshfurrow.model.read.tree.Place;
import freshfurrow.model.read.tree.TreeReader;
import freshfurrow.model.season.Season;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Reads a season file with all the files that it names. */
public final class SeasonFiles {
    private static final String USUAL_NAME = "season.yaml";

    private SeasonFiles() {}

    /**
     * Reads a season.
     *
     * @param season the season file, YAML or JSON, or a folder that holds {@code season.yaml}
     * @param variants merge patches (RFC 7396) over the season file, applied in order
     * @return the season, or all that is wrong with any of the files
     */
    public static Reading read(Path season, List<Path> variants) {
        Problems problems = new Problems();
        Path file = Files.isDirectory(season) ? season.resolve(USUAL_NAME) : season;
        Path absolute = file.toAbsolutePath();
        Path parent = absolute.getParent();
        SeasonFolder folder = new SeasonFolder(parent == null ? absolute : parent);
        Optional<Season> read = Optional.empty();
        try {
            Node root = TreeReader.yaml(folder.readAnywhere(file));
            for (Path variant : variants) {
                root = patched(root, TreeReader.yaml(folder.readAnywhere(variant)), problems);
            }
            read = new SeasonBinder(folder, problems).bind(root);
        } catch (FileProblem e) {
            problems.add(e);
        }
        if (read.isEmpty() || !problems.none()) {
            return new Reading.Invalid(problems.sorted());
        }
        return new Reading.Valid(read.get(), String.valueOf(file.getFileName()), folder.sha256());
    }

    private static Node patched(Node root, Node patch, Problems problems) {
        if (patch instanceof Node.Mapping) {
            return MergePatch.apply(root, patch);
        }
        Place at = patch.place();
        problems.add(at, "is " + patch.noun() + " where a map of changes belongs", "write key: value pairs");
        return root;
    }
}

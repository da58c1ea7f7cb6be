package freshfurrow.model.read;

import freshfurrow.model.read.tree.FileProblem;
import freshfurrow.model.read.tree.MergePatch;
import freshfurrow.model.read.tree.Node;
import freshfurrow.model.read.tree.Place;
import freshfurrow.model.read.tree.TreeReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

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
        return sources(season, variants).reading();
    }

    /**
     * Reads a season, and gives all that was read along with it.
     *
     * @param season as for {@link #read}
     * @param variants as for {@link #read}
     */
    public static SeasonSources sources(Path season, List<Path> variants) {
        Path file = Files.isDirectory(season) ? season.resolve(USUAL_NAME) : season;
        List<Path> paths = new ArrayList<>(List.of(file));
        paths.addAll(variants);
        List<String> names = names(paths);
        Problems problems = new Problems(names);
        Path absolute = file.toAbsolutePath();
        Path parent = absolute.getParent();
        SeasonFolder folder = new SeasonFolder(parent == null ? absolute : parent);
        Optional<SeasonBinder.Bound> read = Optional.empty();
        try {
            Node root = TreeReader.yaml(folder.readAnywhere(file, names.get(0)));
            for (int i = 1; i < paths.size(); i++) {
                root = patched(root, TreeReader.yaml(folder.readAnywhere(paths.get(i), names.get(i))), problems);
            }
            read = new SeasonBinder(folder, problems).bind(root);
        } catch (FileProblem e) {
            problems.add(e);
        }
        if (read.isEmpty() || !problems.none()) {
            return new SeasonSources(file, new Reading.Invalid(problems.sorted()), folder.files());
        }
        Reading valid = new Reading.Valid(
                read.get().season(),
                String.valueOf(file.getFileName()),
                folder.sha256(),
                read.get().weather(),
                read.get().costs());
        return new SeasonSources(file, valid, folder.files());
    }

    /** File names; of files that have the same name, the paths as they were given. */
    private static List<String> names(List<Path> paths) {
        List<String> names =
                paths.stream().map(path -> String.valueOf(path.getFileName())).toList();
        return IntStream.range(0, paths.size())
                .mapToObj(i -> Collections.frequency(names, names.get(i)) == 1
                        ? names.get(i)
                        : paths.get(i).toString())
                .toList();
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

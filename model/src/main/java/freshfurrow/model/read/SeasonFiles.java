package freshfurrow.model.read;

import freshfurrow.model.read.tree.FileProblem;
import freshfurrow.model.read.tree.MergePatch;
import freshfurrow.model.read.tree.Node;
import freshfurrow.model.read.tree.Place;
import freshfurrow.model.read.tree.TextFile;
import freshfurrow.model.read.tree.TreeReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
     * Reads a season with one more variant, which is on no disk yet.
     *
     * @param season as for {@link #read(Path, List)}
     * @param variants as for {@link #read(Path, List)}
     * @param last a merge patch over those
     */
    public static Reading read(Path season, List<Path> variants, TextFile last) {
        return sources(season, variants, Optional.of(last)).reading();
    }

    /**
     * Reads a season, and gives all that was read along with it.
     *
     * @param season as for {@link #read(Path, List)}
     * @param variants as for {@link #read(Path, List)}
     */
    public static SeasonSources sources(Path season, List<Path> variants) {
        return sources(season, variants, Optional.empty());
    }

    private static SeasonSources sources(Path season, List<Path> variants, Optional<TextFile> last) {
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
            if (last.isPresent()) {
                root = patched(root, TreeReader.yaml(last.get()), problems);
            }
            read = new SeasonBinder(folder, problems).bind(root);
        } catch (FileProblem e) {
            problems.add(e);
        }
        Reading reading = reading(read, problems, String.valueOf(file.getFileName()), folder);
        return new SeasonSources(file, reading, folder.files(), folder.maps());
    }

    /**
     * Reads a season that is on no disk yet, as it would be read from there.
     *
     * @param season the season file
     * @param others the files that it names, by the names that it gives them
     */
    public static Reading read(TextFile season, List<TextFile> others) {
        Map<String, TextFile> byName = new HashMap<>();
        others.forEach(file -> byName.put(file.name(), file));
        SeasonFolder folder = SeasonFolder.unwritten(byName);
        Problems problems = new Problems(List.of(season.name()));
        Optional<SeasonBinder.Bound> read = Optional.empty();
        try {
            read = new SeasonBinder(folder, problems).bind(TreeReader.yaml(folder.readUnwritten(season)));
        } catch (FileProblem e) {
            problems.add(e);
        }
        return reading(read, problems, season.name(), folder);
    }

    private static Reading reading(
            Optional<SeasonBinder.Bound> read, Problems problems, String name, SeasonFolder folder) {
        return read.isEmpty() || !problems.none()
                ? new Reading.Invalid(problems.sorted())
                : new Reading.Valid(
                        read.get().season(),
                        name,
                        folder.sha256(),
                        read.get().weather(),
                        read.get().costs());
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

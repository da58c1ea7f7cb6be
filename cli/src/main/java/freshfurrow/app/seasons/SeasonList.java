package freshfurrow.app.seasons;

import freshfurrow.app.input.GivenSeason;
import freshfurrow.app.refusal.FileFailure;
import freshfurrow.app.refusal.InputRefusal;
import freshfurrow.app.refusal.Refused;
import freshfurrow.model.read.Problem;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * The seasons of a folder, or of a file that lists them.
 *
 * @param seasons in the same order whenever and wherever they are read; no two share a folder, where their plans would be one
 */
record SeasonList(List<GivenSeason> seasons) {
    private static final String SEASON_FILE = "season.yaml";

    SeasonList {
        seasons = List.copyOf(seasons);
    }

    /**
     * Reads which seasons there are, not what they say.
     *
     * @param path a folder, of which each season.yaml at any depth is a season, or a file with a season on each line, as seen from its folder
     * @throws Refused when there are none, or two share a folder
     */
    static SeasonList of(Path path) {
        try {
            return Files.isDirectory(path) ? ofFolder(path) : ofFile(path);
        } catch (IOException e) {
            throw refused(path, FileFailure.reason(e), "name a folder, or a file with a season on each line");
        }
    }

    private static SeasonList ofFolder(Path folder) throws IOException {
        try (Stream<Path> files = Files.find(
                folder, Integer.MAX_VALUE, (file, about) -> about.isRegularFile() && file.endsWith(SEASON_FILE))) {
            return checked(folder, files.sorted().toList());
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private static SeasonList ofFile(Path file) throws IOException {
        Path folder = file.resolveSibling("");
        return checked(
                file,
                Files.readAllLines(file).stream()
                        .map(String::strip)
                        .filter(line -> !line.isEmpty() && !line.startsWith("#"))
                        .map(folder::resolve)
                        .toList());
    }

    private static SeasonList checked(Path list, List<Path> paths) {
        if (paths.isEmpty()) {
            throw refused(list, "there is no season in it", "it needs a " + SEASON_FILE + ", or a season on a line");
        }
        Map<Path, Path> folders = new HashMap<>();
        List<Problem> problems = new ArrayList<>();
        List<GivenSeason> seasons =
                paths.stream().map(path -> new GivenSeason(path, List.of())).toList();
        for (GivenSeason season : seasons) {
            Path other = folders.put(season.folder().toAbsolutePath().normalize(), season.path());
            if (other != null) {
                problems.add(problem(
                        list,
                        other + " and " + season.path() + " share a folder, and so would their plans",
                        "list each season once, in a folder of its own"));
            }
        }
        if (!problems.isEmpty()) {
            throw new Refused(new InputRefusal.ProblemsFound(problems));
        }
        return new SeasonList(seasons);
    }

    private static Refused refused(Path list, String reason, String remedy) {
        return new Refused(new InputRefusal.ProblemsFound(List.of(problem(list, reason, remedy))));
    }

    private static Problem problem(Path list, String reason, String remedy) {
        return new Problem(list.toString(), OptionalInt.empty(), "", reason, remedy);
    }
}

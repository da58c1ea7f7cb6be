package freshfurrow.model.read;

import java.nio.file.Path;
import java.util.List;

/**
 * A season with the files that it was read from, all of one moment.
 *
 * @param path of the season file, whether it is there or not
 * @param files those that could be read, in the order of reading: the season file first, then its variants, then those that they name
 * @param maps of roads, that distances were measured on
 */
public record SeasonSources(Path path, Reading reading, List<SourceFile> files, List<SeenMap> maps) {
    public SeasonSources {
        files = List.copyOf(files);
        maps = List.copyOf(maps);
    }
}

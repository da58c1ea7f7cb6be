package freshfurrow.roads;

import com.graphhopper.storage.DAType;
import com.graphhopper.storage.Directory;
import com.graphhopper.storage.GHDirectory;
import freshfurrow.model.files.WholeFolder;
import freshfurrow.model.roads.RoadMap;
import freshfurrow.model.roads.RoadNews;
import freshfurrow.model.roads.UnusableMap;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;

/** Graphs of maps, each read once and kept in a folder of its own beside the season, by the checksum of its map. */
final class KeptGraphs {
    /** Of which values of {@link RoadValues} and which tags graphs are made. */
    static final int FORM = 1;

    private static final int KEY_LETTERS = 16;

    /** How long somebody else who reads the same map is waited for. */
    private static final Duration PATIENCE = Duration.ofMinutes(30);

    private KeptGraphs() {}

    /**
     * The graph of a map.
     *
     * @throws UnusableMap when it cannot be read
     */
    static RoadGraph of(RoadMap map) throws UnusableMap {
        Path folder = map.kept().resolve("maps").resolve(map.sha256().substring(0, KEY_LETTERS) + "-" + FORM);
        try {
            WholeFolder.ensure(folder, PATIENCE, beside -> {
                try {
                    read(map, onDisk(beside), true);
                } catch (UnusableMap e) {
                    throw new Unread(e);
                }
            });
            return RoadGraph.loaded(onDisk(folder));
        } catch (Unread e) {
            throw e.unusable;
        } catch (IOException | RuntimeException e) {
            // It cannot be kept there, or is broken: read for this time only.
            return read(map, new GHDirectory("", DAType.RAM), false);
        }
    }

    private static RoadGraph read(RoadMap map, Directory directory, boolean isKept) throws UnusableMap {
        RoadNews news = RoadNews.found();
        news.reads(map.file(), isKept);
        try {
            return RoadFile.imported(map.file(), directory);
        } finally {
            news.done();
        }
    }

    private static Directory onDisk(Path folder) {
        return new GHDirectory(folder.toString(), DAType.RAM_STORE);
    }

    /** An unusable map, through a door that knows of files only. */
    private static final class Unread extends RuntimeException {
        private static final long serialVersionUID = 1;

        private final UnusableMap unusable;

        Unread(UnusableMap unusable) {
            super(unusable);
            this.unusable = unusable;
        }
    }
}

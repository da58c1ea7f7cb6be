package freshfurrow.model.read;

import freshfurrow.model.read.tree.FileProblem;
import freshfurrow.model.read.tree.Node;
import freshfurrow.model.read.tree.TextFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The folder of the season file: files that it names are read from there and from nowhere else. Remembers all that was read. */
final class SeasonFolder {
    /** Largest season, variant, table or matrix file, MiB. */
    static final int SEASON_MIB = 8;

    /** Largest GeoJSON file, MiB. */
    static final int MAP_MIB = 32;

    private final Path folder;
    /** Files that are not on any disk yet, by name; empty for those of a folder that is. */
    private final Optional<Map<String, TextFile>> unwritten;

    private final MessageDigest digest;
    private final List<SourceFile> files = new ArrayList<>();
    private final List<Path> maps = new ArrayList<>();

    SeasonFolder(Path folder) {
        this(folder, Optional.empty());
    }

    /** A folder with those files and no others, none of which is on a disk. */
    static SeasonFolder unwritten(Map<String, TextFile> files) {
        return new SeasonFolder(Path.of(""), Optional.of(Map.copyOf(files)));
    }

    private SeasonFolder(Path folder, Optional<Map<String, TextFile>> unwritten) {
        this.folder = folder;
        this.unwritten = unwritten;
        try {
            digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The season file or a variant, wherever it is, by the name that messages give it. */
    TextFile readAnywhere(Path path, String name) throws FileProblem {
        return remember(path, TextFile.read(path, name, SEASON_MIB));
    }

    /** A file that the season file names. */
    TextFile read(Node.Text name, int mostMebibytes) throws FileProblem {
        if (unwritten.isPresent()) {
            TextFile file = unwritten.get().get(name.text());
            if (file == null) {
                throw new FileProblem(name.place(), "'" + name.text() + "' does not exist", "check the name");
            }
            return remember(Path.of(file.name()), file);
        }
        Path path = inside(name);
        try {
            return remember(path, TextFile.read(path, name.text(), mostMebibytes));
        } catch (FileProblem e) {
            if (e.place().line() > 0) {
                throw e;
            }
            throw new FileProblem(name.place(), "'" + name.text() + "' " + e.reason(), e.remedy());
        }
    }

    /** Where a map of roads is that the season file names; it need not be there. */
    Path map(Node.Text name) throws FileProblem {
        if (unwritten.isPresent()) {
            throw new FileProblem(
                    name.place(), "a map of roads is read beside a season that is written", "write the season first");
        }
        return inside(name);
    }

    /** The folder for what is measured on maps of roads, whether it is there or not. */
    Path measured() {
        return folder.resolve("roads-measured");
    }

    /** What was measured on a map counts among what was read, whatever else the map holds. */
    void remember(Path map, String measured) {
        digest.update(measured.getBytes(StandardCharsets.UTF_8));
        maps.add(map);
    }

    /** Maps of roads that were measured on. */
    List<SeenMap> maps() {
        return maps.stream().map(SeenMap::of).toList();
    }

    /** Of all files read so far, in the order of reading. */
    String sha256() {
        try {
            MessageDigest copy = (MessageDigest) digest.clone();
            return HexFormat.of().formatHex(copy.digest());
        } catch (CloneNotSupportedException e) {
            throw new IllegalStateException(e);
        }
    }

    private Path inside(Node.Text name) throws FileProblem {
        FileProblem outside = new FileProblem(
                name.place(),
                "'" + name.text() + "' leads outside the season's folder",
                "put the file beside the season file and name it without a path");
        try {
            Path path = folder.resolve(name.text());
            if (Path.of(name.text()).isAbsolute()
                    || !path.normalize().startsWith(folder.normalize())
                    || (Files.exists(path) && !path.toRealPath().startsWith(folder.toRealPath()))) {
                throw outside;
            }
            return path;
        } catch (InvalidPathException e) {
            throw new FileProblem(
                    name.place(), "'" + name.text() + "' is not a file name", "name a file beside this one");
        } catch (IOException e) {
            throw outside;
        }
    }

    /** All files read so far, in the order of reading. */
    List<SourceFile> files() {
        return List.copyOf(files);
    }

    /** The season file itself, when it is not on a disk. */
    TextFile readUnwritten(TextFile season) {
        return remember(Path.of(season.name()), season);
    }

    private TextFile remember(Path path, TextFile file) {
        file.addTo(digest);
        files.add(new SourceFile(path, file));
        return file;
    }
}

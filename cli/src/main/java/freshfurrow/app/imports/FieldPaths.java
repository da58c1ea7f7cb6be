package freshfurrow.app.imports;

import freshfurrow.app.begin.UnusableMap;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Files of fields on a disk: one, or the parts of a shapefile, which stand beside one another under the same name. */
public final class FieldPaths {
    private static final long MOST_BYTES = 32L << 20;
    private static final List<String> PARTS = List.of("dbf", "prj", "cpg");

    private FieldPaths() {}

    /**
     * What the files hold.
     *
     * @throws UnusableMap when one of them cannot be read
     */
    public static Map<String, byte[]> read(Path file) throws UnusableMap {
        String name = String.valueOf(file.getFileName());
        String ending = ending(name);
        if (PARTS.contains(ending) || ending.equals("shx")) {
            throw new UnusableMap("That is a part of a shapefile. Name the .shp file beside it.");
        }
        Map<String, byte[]> files = new LinkedHashMap<>(Map.of(name, content(file)));
        if (ending.equals("shp")) {
            Path folder = file.toAbsolutePath().getParent();
            try (DirectoryStream<Path> beside =
                    Files.newDirectoryStream(folder == null ? file.toAbsolutePath() : folder)) {
                for (Path other : beside) {
                    String own = String.valueOf(other.getFileName());
                    if (PARTS.contains(ending(own)) && base(own).equalsIgnoreCase(base(name))) {
                        files.put(own, content(other));
                    }
                }
            } catch (IOException e) {
                throw new UnusableMap("The files beside it cannot be read.");
            }
        }
        return files;
    }

    private static byte[] content(Path file) throws UnusableMap {
        try {
            if (!Files.isRegularFile(file)) {
                throw new UnusableMap(Files.exists(file) ? "That is no ordinary file." : "There is no such file.");
            }
            if (Files.size(file) > MOST_BYTES) {
                throw new UnusableMap("It is larger than 32 MiB, more than a map of fields needs.");
            }
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UnusableMap("It cannot be read.");
        }
    }

    private static String ending(String name) {
        return name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    }

    private static String base(String name) {
        return name.contains(".") ? name.substring(0, name.lastIndexOf('.')) : name;
    }
}

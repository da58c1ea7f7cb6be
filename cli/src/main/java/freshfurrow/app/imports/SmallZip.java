package freshfurrow.app.imports;

import freshfurrow.app.begin.UnusableMap;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/** A zip whose files are unpacked in memory, no more of it than a map of fields can hold: it may come from anyone. */
final class SmallZip {
    private static final int MOST_BYTES = 64 << 20;
    private static final int MOST_FILES = 1_000;

    private SmallZip() {}

    static boolean isOne(byte[] content) {
        return content.length >= 4 && content[0] == 'P' && content[1] == 'K' && content[2] == 3 && content[3] == 4;
    }

    /** Its files by their names, without folders. */
    static Map<String, byte[]> files(byte[] zip) throws UnusableMap {
        Map<String, byte[]> files = new LinkedHashMap<>();
        int left = MOST_BYTES;
        int entries = 0;
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                byte[] content = in.readNBytes(left + 1);
                left -= content.length;
                entries++;
                if (left < 0 || entries > MOST_FILES) {
                    throw new UnusableMap(
                            "The zip holds more than 64 MiB or 1,000 files, more than a map of fields needs. "
                                    + "Unzip it, and take the file of the fields.");
                }
                String name = entry.getName().replace('\\', '/');
                if (!entry.isDirectory()) {
                    files.putIfAbsent(name.substring(name.lastIndexOf('/') + 1), content);
                }
            }
        } catch (IOException | IllegalArgumentException e) {
            throw new UnusableMap("The zip is broken or locked with a password. Save it again.");
        }
        return files;
    }
}

package freshfurrow.model.roads;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * A map of roads.
 *
 * @param file where it is
 * @param sha256 of all that it holds, lower-case hex
 * @param kept the folder for what is made of it, whether it is there or not
 */
public record RoadMap(Path file, String sha256, Path kept) {
    private static final int BUFFER_BYTES = 1 << 16;

    static RoadMap of(Path file, Path kept) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            byte[] buffer = new byte[BUFFER_BYTES];
            for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
                digest.update(buffer, 0, read);
            }
            return new RoadMap(file, HexFormat.of().formatHex(digest.digest()), kept);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}

package freshfurrow.model.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;

/** A file that is to be written. */
public final class NewFile {
    private final Path path;
    private final byte[] content;
    private final IfThere ifThere;
    private final Optional<byte[]> seen;

    private NewFile(Path path, byte[] content, IfThere ifThere, Optional<byte[]> seen) {
        this.path = path;
        this.content = content;
        this.ifThere = ifThere;
        this.seen = seen;
    }

    /** A file that holds text as UTF-8. */
    public static NewFile of(Path path, String text, IfThere ifThere) {
        return new NewFile(path, text.getBytes(StandardCharsets.UTF_8), ifThere, Optional.empty());
    }

    public static NewFile of(Path path, byte[] content, IfThere ifThere) {
        return new NewFile(path, content.clone(), ifThere, Optional.empty());
    }

    /**
     * A file in place of one that holds something known, so that nothing that nobody saw is lost.
     *
     * @param seen what it has to hold still when it is replaced
     */
    public static NewFile inPlaceOf(byte[] seen, Path path, byte[] content) {
        return new NewFile(path, content.clone(), IfThere.REPLACE, Optional.of(seen.clone()));
    }

    public Path path() {
        return path;
    }

    IfThere ifThere() {
        return ifThere;
    }

    byte[] content() {
        return content;
    }

    /** @throws ObstructedFile when it cannot be written as things are now */
    void refuseObstructed() throws ObstructedFile {
        ObstructedFile.refuse(path, ifThere);
    }

    /**
     * Makes sure that the old file holds what it is known to hold, where that matters.
     *
     * @param where it is now
     * @throws ChangedFile when it does not
     */
    void refuseChanged(Path where) throws IOException {
        if (seen.isEmpty()) {
            return;
        }
        if (!Files.exists(where, LinkOption.NOFOLLOW_LINKS) || !Arrays.equals(Files.readAllBytes(where), seen.get())) {
            throw new ChangedFile(path);
        }
    }
}

package freshfurrow.model.files;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** A file that is to be written. */
public final class NewFile {
    private final Path path;
    private final byte[] content;
    private final IfThere ifThere;

    private NewFile(Path path, byte[] content, IfThere ifThere) {
        this.path = path;
        this.content = content;
        this.ifThere = ifThere;
    }

    /** A file that holds text as UTF-8. */
    public static NewFile of(Path path, String text, IfThere ifThere) {
        return new NewFile(path, text.getBytes(StandardCharsets.UTF_8), ifThere);
    }

    public static NewFile of(Path path, byte[] content, IfThere ifThere) {
        return new NewFile(path, content.clone(), ifThere);
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
}

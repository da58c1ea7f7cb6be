package freshfurrow.model.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;

/** Who may do what with a file, given on to the one that replaces it; where the system knows no modes, there is nothing to give on. */
final class Likeness {
    private Likeness() {}

    static FileAttribute<?>[] usual() {
        return new FileAttribute<?>[0];
    }

    /** So that nobody reads, while it is written, what others may not read. */
    static FileAttribute<?>[] ownerOnly(Path file) {
        return file.getFileSystem().supportedFileAttributeViews().contains("posix")
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))
                }
                : usual();
    }

    static void copy(Path from, Path to) throws IOException {
        Optional<PosixFileAttributeView> source = view(from);
        Optional<PosixFileAttributeView> target = view(to);
        if (source.isPresent() && target.isPresent()) {
            PosixFileAttributes wanted = source.get().readAttributes();
            giveAway(target.get(), wanted);
            target.get().setPermissions(wanted.permissions());
        }
    }

    private static void giveAway(PosixFileAttributeView file, PosixFileAttributes wanted) {
        try {
            file.setGroup(wanted.group());
            file.setOwner(wanted.owner());
        } catch (IOException e) {
            return; // only a superuser gives files away; the mode is kept all the same
        }
    }

    private static Optional<PosixFileAttributeView> view(Path file) {
        return Optional.ofNullable(
                Files.getFileAttributeView(file, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS));
    }
}

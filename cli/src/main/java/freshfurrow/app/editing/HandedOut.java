package freshfurrow.app.editing;

import freshfurrow.model.read.SourceFile;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/** The last versions of files that somebody has seen, so that what an edit would make of them can still be told. */
final class HandedOut {
    private static final int MOST = 32;
    private static final long MOST_CHARACTERS = 64L << 20;

    /** The latest first. */
    private final Deque<Version> versions = new ArrayDeque<>();

    private record Version(String sha256, SourceFile file) {
        boolean is(String name, String itsSha256) {
            return file.name().equals(name) && sha256.equals(itsSha256);
        }
    }

    /** Remembers a version, and forgets the oldest ones for it. */
    void add(SourceFile file) {
        String sha256 = file.text().sha256();
        versions.removeIf(version -> version.is(file.name(), sha256));
        versions.addFirst(new Version(sha256, file));
        while (versions.size() > 1 && (versions.size() > MOST || characters() > MOST_CHARACTERS)) {
            versions.removeLast();
        }
    }

    Optional<SourceFile> find(String name, String sha256) {
        return versions.stream()
                .filter(version -> version.is(name, sha256))
                .map(Version::file)
                .findFirst();
    }

    private long characters() {
        return versions.stream()
                .mapToLong(version -> version.file().text().text().length())
                .sum();
    }
}

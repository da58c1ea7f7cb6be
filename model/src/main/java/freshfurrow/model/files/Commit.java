package freshfurrow.model.files;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/** Several files put in place together: all are ready beside before the first is renamed, and a failure takes back those before it. */
final class Commit {
    private record Placed(Path file, Optional<Path> before) {}

    private final List<Path> temporary = new ArrayList<>();
    private final Deque<Placed> placed = new ArrayDeque<>();

    private Commit() {}

    /** @throws IOException when one cannot be written; then all is as it was */
    static void all(List<NewFile> files) throws IOException {
        Commit commit = new Commit();
        try {
            commit.run(files);
        } finally {
            for (Path left : commit.temporary) {
                Files.deleteIfExists(left);
            }
        }
    }

    private void run(List<NewFile> files) throws IOException {
        List<Path> ready = new ArrayList<>();
        for (NewFile file : files) {
            file.refuseObstructed();
        }
        for (NewFile file : files) {
            Path beside = Beside.written(file);
            temporary.add(beside);
            ready.add(beside);
        }
        try {
            for (int i = 0; i < ready.size(); i++) {
                put(ready.get(i), files.get(i));
            }
        } catch (IOException e) {
            takeBack(e);
            throw e;
        }
    }

    private void put(Path ready, NewFile file) throws IOException {
        file.refuseObstructed();
        Path path = file.path();
        if (file.ifThere() == IfThere.KEEP) {
            putNew(ready, path);
            placed.push(new Placed(path, Optional.empty()));
            return;
        }
        file.refuseChanged(path);
        Optional<Path> before = Optional.empty();
        if (Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
            before = Optional.of(Beside.kept(path));
            before.ifPresent(temporary::add);
        }
        Files.move(ready, path, StandardCopyOption.ATOMIC_MOVE);
        placed.push(new Placed(path, before));
        if (before.isPresent()) {
            file.refuseChanged(before.get()); // another program may have had it open
        }
    }

    /** A rename would replace what came there this very moment; a second name is refused then. */
    private static void putNew(Path ready, Path path) throws IOException {
        try {
            Files.createLink(path, ready);
        } catch (FileAlreadyExistsException e) {
            throw new ObstructedFile(path, Obstacle.THERE);
        } catch (IOException | UnsupportedOperationException e) {
            moveWhereNothingIs(ready, path);
        }
    }

    /** For file systems on which a file has one name only; there at least no other writer of ours is at work. */
    private static void moveWhereNothingIs(Path ready, Path path) throws IOException {
        try {
            Files.move(ready, path);
        } catch (FileAlreadyExistsException e) {
            throw new ObstructedFile(path, Obstacle.THERE);
        }
    }

    private void takeBack(IOException cause) {
        for (Placed one : placed) {
            try {
                if (one.before().isPresent()) {
                    Files.move(one.before().get(), one.file(), StandardCopyOption.ATOMIC_MOVE);
                } else {
                    Files.deleteIfExists(one.file());
                }
            } catch (IOException e) {
                cause.addSuppressed(e);
            }
        }
    }
}

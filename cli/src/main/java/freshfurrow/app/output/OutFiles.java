package freshfurrow.app.output;

import freshfurrow.app.refusal.FileFailure;
import freshfurrow.app.refusal.OutputRefusal;
import freshfurrow.app.refusal.OutputRefusal.Obstruction;
import freshfurrow.app.refusal.OutputRefusal.Unwritten;
import freshfurrow.app.refusal.Refused;
import freshfurrow.model.files.Folders;
import freshfurrow.model.files.IfThere;
import freshfurrow.model.files.NewFile;
import freshfurrow.model.files.Obstacle;
import freshfurrow.model.files.ObstructedFile;
import freshfurrow.model.files.WriteTurn;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** Files that are made for whoever asks; where they are not written, it says what is not done. */
public final class OutFiles {
    /** Files that are made of what is there. */
    public static final OutFiles MADE = new OutFiles(Unwritten.FILES);

    /** Files of a season that is begun. */
    public static final OutFiles BEGUN = new OutFiles(Unwritten.SEASON);

    private final Unwritten unwritten;

    OutFiles(Unwritten unwritten) {
        this.unwritten = unwritten;
    }

    /**
     * Makes sure, before time goes into what is to be written, that nothing stands there.
     *
     * @throws Refused with a line for each file that something is in the way of
     */
    public void refuseObstructed(List<Path> files, IfThere ifThere) {
        List<Obstruction> obstructions = files.stream()
                .flatMap(file ->
                        Obstacle.before(file, ifThere).map(obstacle -> new Obstruction(file, obstacle)).stream())
                .toList();
        if (!obstructions.isEmpty()) {
            throw new Refused(new OutputRefusal.Obstructed(obstructions, unwritten));
        }
    }

    /**
     * Makes sure, before time goes into what is to be written, that files can be made in a folder. Makes no folder yet.
     *
     * @throws Refused when they cannot
     */
    public void tryOut(Path folder) {
        try {
            Folders.tryOut(folder);
        } catch (IOException e) {
            throw refusal(folder, e);
        }
    }

    /**
     * Writes all of the files, or none.
     *
     * @throws Refused when one is there unasked or cannot be written
     */
    public void writeAll(List<NewFile> files) {
        Path first = files.get(0).path();
        try {
            WriteTurn.writeAll(files);
        } catch (IOException e) {
            throw refusal(first, e);
        }
    }

    /**
     * Takes a file away again that was written by this and that nobody has changed since.
     *
     * @throws Refused when it cannot be taken away
     */
    public void takeBack(NewFile file) {
        try {
            WriteTurn.takeBack(file);
        } catch (IOException e) {
            throw refusal(file.path(), e);
        }
    }

    /** @param first names what could not be written when the failure does not */
    Refused refusal(Path first, IOException failure) {
        if (failure instanceof ObstructedFile obstructed) {
            return refusal(Path.of(obstructed.getFile()), obstructed.obstacle());
        }
        return new Refused(new OutputRefusal.Unwritable(first, FileFailure.reason(failure), unwritten));
    }

    Refused refusal(Path file, Obstacle obstacle) {
        return new Refused(new OutputRefusal.Obstructed(List.of(new Obstruction(file, obstacle)), unwritten));
    }
}

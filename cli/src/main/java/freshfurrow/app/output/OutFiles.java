package freshfurrow.app.output;

import freshfurrow.cli.command.Failures;
import freshfurrow.cli.command.Refusal;
import freshfurrow.model.files.Folders;
import freshfurrow.model.files.IfThere;
import freshfurrow.model.files.NewFile;
import freshfurrow.model.files.Obstacle;
import freshfurrow.model.files.ObstructedFile;
import freshfurrow.model.files.WriteTurn;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/**
 * Files that a command makes; where they are not written, it says why.
 *
 * @param what is not done when they cannot be written, as {@code nothing was planned}
 * @param elsewhere how to have them written to another place, as {@code write elsewhere with --out DIR}
 */
public record OutFiles(String what, String elsewhere) {
    public static final OutFiles WRITTEN = new OutFiles("nothing was written", "write elsewhere with --out");

    /**
     * Makes sure, before time goes into what is to be written, that nothing stands there.
     *
     * @throws Refusal with a line for each file that something is in the way of
     */
    public void refuseObstructed(List<Path> files, IfThere ifThere) {
        List<String> obstructed = files.stream()
                .flatMap(file -> Obstacle.before(file, ifThere).map(obstacle -> line(file, obstacle)).stream())
                .toList();
        if (!obstructed.isEmpty()) {
            throw new Refusal(obstructed);
        }
    }

    /**
     * Makes sure, before time goes into what is to be written, that files can be made in a folder. Makes no folder yet.
     *
     * @throws Refusal when they cannot
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
     * @throws Refusal when one is there unasked or cannot be written
     */
    public void writeAll(List<NewFile> files) {
        Path first = files.get(0).path();
        try {
            WriteTurn.writeAll(files);
        } catch (IOException e) {
            throw refusal(first, e);
        }
    }

    /** @param first names what could not be written when the failure does not */
    public Refusal refusal(Path first, IOException failure) {
        if (failure instanceof ObstructedFile obstructed) {
            return refusal(Path.of(obstructed.getFile()), obstructed.obstacle());
        }
        return new Refusal(
                first + ": cannot be written (" + Failures.reason(failure) + "), so " + what + "; " + elsewhere);
    }

    public Refusal refusal(Path file, Obstacle obstacle) {
        return new Refusal(line(file, obstacle));
    }

    private String line(Path file, Obstacle obstacle) {
        String reason = file + ": " + obstacle.words() + ", so " + what + "; ";
        return switch (obstacle) {
            case THERE -> reason + "replace it with --force, or " + elsewhere;
            case LINK, NO_ORDINARY_FILE -> reason + "move it away, or " + elsewhere;
        };
    }
}

package freshfurrow.app.imports;

import freshfurrow.app.begin.FieldsText;
import freshfurrow.app.output.OutFiles;
import freshfurrow.app.refusal.InputRefusal;
import freshfurrow.app.refusal.Refused;
import freshfurrow.model.files.IfThere;
import freshfurrow.model.files.NewFile;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** The file that fields are read into. */
public final class ImportedFile {
    private ImportedFile() {}

    /**
     * Writes it.
     *
     * @param from the file that the fields were read from, which is never replaced
     * @param out where it goes; empty for its usual name beside the other
     * @param force whether another file that is there is replaced
     * @return where it is
     * @throws Refused when something is wrong with a field, or the file is there unasked or cannot be written; then nothing is
     */
    public static Path write(FieldsText fields, Path from, Optional<Path> out, boolean force) {
        if (!fields.problems().isEmpty()) {
            throw new Refused(new InputRefusal.ProblemsFound(fields.problems()));
        }
        Path file = out.orElseGet(() -> from.resolveSibling(fields.name()));
        boolean same =
                file.toAbsolutePath().normalize().equals(from.toAbsolutePath().normalize());
        IfThere ifThere = IfThere.replaceIf(force && !same);
        OutFiles.MADE.refuseObstructed(List.of(file), ifThere);
        OutFiles.MADE.writeAll(List.of(NewFile.of(file, fields.text(), ifThere)));
        return file;
    }
}

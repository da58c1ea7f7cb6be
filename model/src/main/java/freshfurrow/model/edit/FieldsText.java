package freshfurrow.model.edit;

import freshfurrow.model.read.tree.FileProblem;
import freshfurrow.model.read.tree.Node;
import freshfurrow.model.read.tree.TextFile;
import java.util.Locale;

/** A file of fields of its own, beside the season file, that is edited by position. */
interface FieldsText {
    /** The file as it is. */
    TextFile file();

    /** Fields by their ids, as if they stood in the season file. */
    Node.Mapping tree();

    /**
     * The file with an edit.
     *
     * @param edit with a path that begins with the id of a field
     * @throws FileProblem when it cannot be made by position
     */
    FieldsText with(Edit edit) throws FileProblem;

    /**
     * A file of fields, a table or a map.
     *
     * @throws FileProblem when it is none
     */
    static FieldsText of(TextFile file) throws FileProblem {
        return file.name().toLowerCase(Locale.ROOT).endsWith(".csv") ? CsvFields.of(file) : MapFields.of(file);
    }
}

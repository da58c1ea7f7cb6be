package freshfurrow.model.edit;

import freshfurrow.model.read.tree.FileProblem;
import freshfurrow.model.read.tree.Node;
import freshfurrow.model.read.tree.Place;
import freshfurrow.model.read.tree.TextFile;
import freshfurrow.model.read.tree.TreeReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A file of YAML or JSON that is edited by position. */
final class TreeText {
    /** How the file is read, and how it is written. */
    enum Notation {
        YAML,
        /** JSON that is read as YAML, as a season file in JSON is. */
        JSON_AS_YAML,
        JSON
    }

    private final TextFile file;
    private final Notation notation;
    private final Node tree;
    private final Spot root;

    private TreeText(TextFile file, Notation notation, Node tree, Spot root) {
        this.file = file;
        this.notation = notation;
        this.tree = tree;
        this.root = root;
    }

    /** @throws FileProblem when the file is no tree */
    static TreeText yaml(TextFile file) throws FileProblem {
        Node tree = TreeReader.yaml(file);
        Spot root = YamlSpots.of(file.text());
        boolean json = root instanceof Spot.Mapping map
                && map.flow()
                && !map.entries().isEmpty()
                && map.entries().get(0).quotes() == Quotes.DOUBLE;
        return new TreeText(file, json ? Notation.JSON_AS_YAML : Notation.YAML, tree, root);
    }

    /** @throws FileProblem when the file is no tree */
    static TreeText json(TextFile file) throws FileProblem {
        return new TreeText(file, Notation.JSON, TreeReader.json(file), JsonSpots.of(file.text()));
    }

    TextFile file() {
        return file;
    }

    Node tree() {
        return tree;
    }

    /**
     * The file with an edit, and all else as it was.
     *
     * @throws FileProblem when it cannot be made by position: then nothing else is tried
     */
    TreeText with(Edit edit) throws FileProblem {
        Node wanted = Trees.with(tree, edit);
        TextFile changed = file.changed(Change.applied(file.text(), changes(edit)));
        TreeText after;
        try {
            after = notation == Notation.JSON ? json(changed) : yaml(changed);
        } catch (FileProblem e) {
            throw notByPosition(edit);
        }
        if (!changed.isUnicode() || !Trees.same(after.tree, wanted)) {
            throw notByPosition(edit);
        }
        return after;
    }

    private List<Change> changes(Edit edit) throws FileProblem {
        NewText writer = new NewText(notation != Notation.YAML, new Lines(file.text()).lineBreak(), place(edit));
        TreeChanges changes = new TreeChanges(file.text(), writer);
        return changes.of(root, new ArrayList<>(edit.path()), edit);
    }

    private FileProblem notByPosition(Edit edit) {
        return new FileProblem(
                place(edit),
                "is written in a way that cannot be changed without changing more",
                "change it in " + file.name() + " itself");
    }

    private Place place(Edit edit) {
        int line = 0;
        for (int length = edit.path().size(); length > 0 && line == 0; length--) {
            line = Trees.at(tree, edit.path().subList(0, length))
                    .map(node -> node.place().line())
                    .orElse(0);
        }
        return new Place(file.name(), line, String.join(".", edit.path()));
    }

    /** A value as what is at the end of a path of keys that are missing. */
    static Value under(List<String> keys, Value value) {
        Value all = value;
        for (int i = keys.size() - 1; i >= 0; i--) {
            Map<String, Value> entries = new LinkedHashMap<>();
            entries.put(keys.get(i), all);
            all = new Value.Entries(entries);
        }
        return all;
    }
}

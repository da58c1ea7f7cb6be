package freshfurrow.model.edit;

import freshfurrow.model.read.tree.FileProblem;
import freshfurrow.model.read.tree.Node;
import freshfurrow.model.read.tree.Place;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What an edit makes of a tree, whatever its text looks like: against this, each changed text is held. */
final class Trees {
    private static final Place NOWHERE = new Place("", 0, "");

    private Trees() {}

    /** The part at a path; empty when there is none. */
    static Optional<Node> at(Node root, List<String> path) {
        Optional<Node> node = Optional.of(root);
        for (String key : path) {
            node = node.flatMap(one -> child(one, key));
        }
        return node;
    }

    private static Optional<Node> child(Node node, String key) {
        if (node instanceof Node.Mapping mapping) {
            return Optional.ofNullable(mapping.entries().get(key));
        }
        return node instanceof Node.Sequence list
                ? item(key, list.items().size()).map(number -> list.items().get(number - 1))
                : Optional.empty();
    }

    /** The number of an item, from 1 to their number. */
    static Optional<Integer> item(String key, int size) {
        if (!key.matches("[1-9][0-9]{0,6}")) {
            return Optional.empty();
        }
        int number = Integer.parseInt(key);
        return number <= size ? Optional.of(number) : Optional.empty();
    }

    /**
     * The tree with the edit.
     *
     * @throws FileProblem when there is no place for it
     */
    static Node with(Node root, Edit edit) throws FileProblem {
        return with(root, edit, 0);
    }

    private static Node with(Node node, Edit edit, int depth) throws FileProblem {
        List<String> path = edit.path();
        if (depth == path.size()) {
            return here(node, edit);
        }
        String key = path.get(depth);
        boolean removed = edit instanceof Edit.Remove && depth == path.size() - 1;
        if (node instanceof Node.Sequence list) {
            int index = item(key, list.items().size()).orElseThrow(() -> missing(node, path, depth)) - 1;
            List<Node> items = new ArrayList<>(list.items());
            if (removed) {
                items.remove(index);
            } else {
                items.set(index, with(items.get(index), edit, depth + 1));
            }
            return new Node.Sequence(list.place(), items);
        }
        if (node instanceof Node.Text) {
            throw new FileProblem(
                    node.place(),
                    "is " + node.noun() + " where keys with values belong",
                    "take it out first, or change it in the file");
        }
        Map<String, Node> entries = new LinkedHashMap<>(node instanceof Node.Mapping map ? map.entries() : Map.of());
        Node before = entries.getOrDefault(key, new Node.Nothing(node.place()));
        if (edit instanceof Edit.Remove && !entries.containsKey(key)) {
            throw missing(node, path, depth);
        }
        if (removed) {
            entries.remove(key);
        } else {
            entries.put(key, with(before, edit, depth + 1));
        }
        return new Node.Mapping(node.place(), entries);
    }

    private static Node here(Node before, Edit edit) throws FileProblem {
        if (edit instanceof Edit.Set set) {
            return node(set.value());
        }
        if (edit instanceof Edit.Append append) {
            List<Node> items = new ArrayList<>();
            if (before instanceof Node.Sequence list) {
                items.addAll(list.items());
            } else if (before instanceof Node.Text) {
                items.add(before);
            } else if (before instanceof Node.Mapping) {
                throw new FileProblem(before.place(), "is a map of keys, not a list", "set a key of it");
            }
            items.add(node(append.item()));
            return new Node.Sequence(before.place(), items);
        }
        throw new FileProblem(before.place(), "is the whole season", "take out parts of it");
    }

    static Node node(Value value) {
        if (value instanceof Value.Text text) {
            return new Node.Text(NOWHERE, text.text());
        }
        if (value instanceof Value.Items items) {
            return new Node.Sequence(
                    NOWHERE, items.items().stream().map(Trees::node).toList());
        }
        Map<String, Node> entries = new LinkedHashMap<>();
        ((Value.Entries) value).entries().forEach((key, its) -> entries.put(key, node(its)));
        return new Node.Mapping(NOWHERE, entries);
    }

    private static FileProblem missing(Node node, List<String> path, int depth) {
        return new FileProblem(
                node.place(),
                "has no " + (node instanceof Node.Sequence ? "item " : "") + path.get(depth),
                "look at the season as it is now");
    }

    /** Whether two trees say the same, wherever it stands. */
    static boolean same(Node one, Node other) {
        if (one instanceof Node.Text text) {
            return other instanceof Node.Text its && its.text().equals(text.text());
        }
        if (one instanceof Node.Sequence list) {
            return other instanceof Node.Sequence its && sameItems(list.items(), its.items());
        }
        if (one instanceof Node.Mapping map) {
            return other instanceof Node.Mapping its
                    && List.copyOf(map.entries().keySet())
                            .equals(List.copyOf(its.entries().keySet()))
                    && sameItems(
                            List.copyOf(map.entries().values()),
                            List.copyOf(its.entries().values()));
        }
        return other instanceof Node.Nothing;
    }

    private static boolean sameItems(List<Node> some, List<Node> others) {
        if (some.size() != others.size()) {
            return false;
        }
        for (int i = 0; i < some.size(); i++) {
            if (!same(some.get(i), others.get(i))) {
                return false;
            }
        }
        return true;
    }
}

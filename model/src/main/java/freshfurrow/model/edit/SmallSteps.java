package freshfurrow.model.edit;

import freshfurrow.model.read.tree.Node;
import java.util.ArrayList;
import java.util.List;

/** An edit as the fewest and smallest that do the same: of what is to stand there, what stands there already is not touched. */
final class SmallSteps {
    private SmallSteps() {}

    /** In the order in which they are to be made; none where all is as it is to be. */
    static List<Edit> of(Node root, Edit edit) {
        List<Edit> steps = new ArrayList<>();
        if (edit instanceof Edit.Set set) {
            Trees.at(root, set.path())
                    .ifPresentOrElse(before -> set(before, set.path(), set.value(), steps), () -> steps.add(set));
        } else {
            steps.add(edit);
        }
        return steps;
    }

    private static void set(Node before, List<String> path, Value value, List<Edit> steps) {
        if (value instanceof Value.Entries entries && before instanceof Node.Mapping map) {
            entries.entries().forEach((key, its) -> {
                Node node = map.entries().get(key);
                if (node == null) {
                    steps.add(new Edit.Set(under(path, key), its));
                } else {
                    set(node, under(path, key), its, steps);
                }
            });
            for (String key : map.entries().keySet()) {
                if (!entries.entries().containsKey(key)) {
                    steps.add(new Edit.Remove(under(path, key)));
                }
            }
        } else if (value instanceof Value.Items items && before instanceof Node.Sequence list) {
            setItems(list.items(), path, items.items(), steps);
        } else if (!Trees.same(before, Trees.node(value))) {
            steps.add(new Edit.Set(path, value));
        }
    }

    private static void setItems(List<Node> before, List<String> path, List<Value> items, List<Edit> steps) {
        int kept = Math.min(before.size(), items.size());
        for (int i = 0; i < kept; i++) {
            set(before.get(i), under(path, String.valueOf(i + 1)), items.get(i), steps);
        }
        for (int i = before.size(); i > kept; i--) {
            steps.add(new Edit.Remove(under(path, String.valueOf(i))));
        }
        for (Value item : items.subList(kept, items.size())) {
            steps.add(new Edit.Append(path, item));
        }
    }

    static List<String> under(List<String> path, String key) {
        List<String> longer = new ArrayList<>(path);
        longer.add(key);
        return longer;
    }
}

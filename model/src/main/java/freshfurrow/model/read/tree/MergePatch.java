package freshfurrow.model.read.tree;

import java.util.LinkedHashMap;
import java.util.Map;

/** JSON Merge Patch, RFC 7396 section 2: a null takes a key away, maps are merged, anything else replaces. */
public final class MergePatch {
    private MergePatch() {}

    /** The target with the patch applied; parts that come from the patch keep the patch's places. */
    public static Node apply(Node target, Node patch) {
        if (!(patch instanceof Node.Mapping changes)) {
            return patch;
        }
        Node.Mapping before =
                target instanceof Node.Mapping mapping ? mapping : new Node.Mapping(patch.place(), Map.of());
        Map<String, Node> merged = new LinkedHashMap<>(before.entries());
        Map<String, Place> removed = new LinkedHashMap<>(before.removed());
        changes.entries().forEach((key, change) -> {
            if (change instanceof Node.Nothing) {
                merged.remove(key);
                removed.put(key, change.place());
            } else {
                Node old = merged.get(key);
                merged.put(key, apply(old == null ? new Node.Nothing(change.place()) : old, change));
                removed.remove(key);
            }
        });
        boolean emptied = merged.isEmpty() && !before.entries().isEmpty();
        return new Node.Mapping(emptied ? patch.place() : before.place(), merged, removed);
    }
}

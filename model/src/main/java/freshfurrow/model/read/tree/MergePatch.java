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
        Map<String, Node> merged =
                target instanceof Node.Mapping mapping ? new LinkedHashMap<>(mapping.entries()) : new LinkedHashMap<>();
        changes.entries().forEach((key, change) -> {
            if (change instanceof Node.Nothing) {
                merged.remove(key);
            } else {
                Node before = merged.get(key);
                merged.put(key, apply(before == null ? new Node.Nothing(change.place()) : before, change));
            }
        });
        return new Node.Mapping(target instanceof Node.Mapping ? target.place() : patch.place(), merged);
    }
}

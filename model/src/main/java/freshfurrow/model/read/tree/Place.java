package freshfurrow.model.read.tree;

/**
 * Where something stands.
 *
 * @param file name as people know it
 * @param line from 1; 0 when it has none
 * @param path keys from the root, joined by dots; empty at the root
 */
public record Place(String file, int line, String path) {
    Place under(String key, int keyLine) {
        return new Place(file, keyLine, path.isEmpty() ? key : path + "." + key);
    }
}

package freshfurrow.model.edit;

import java.util.List;

/**
 * One change of a season.
 *
 * <p>A path is the keys from the season's root; in a list it is the number of the item, from 1. Fields are under {@code fields} by their
 * ids, in whichever file they are.
 */
public sealed interface Edit {
    List<String> path();

    /** The same edit at another path. */
    Edit at(List<String> otherPath);

    /** Something is to stand there, whatever stood there before; keys on the way that are missing are made. */
    record Set(List<String> path, Value value) implements Edit {
        public Set {
            path = List.copyOf(path);
        }

        @Override
        public Edit at(List<String> otherPath) {
            return new Set(otherPath, value);
        }
    }

    /** Nothing is to stand there any more: neither key nor item. */
    record Remove(List<String> path) implements Edit {
        public Remove {
            path = List.copyOf(path);
        }

        @Override
        public Edit at(List<String> otherPath) {
            return new Remove(otherPath);
        }
    }

    /** One more item at the end of a list; a single value that stands there, or nothing, becomes a list. */
    record Append(List<String> path, Value item) implements Edit {
        public Append {
            path = List.copyOf(path);
        }

        @Override
        public Edit at(List<String> otherPath) {
            return new Append(otherPath, item);
        }
    }
}

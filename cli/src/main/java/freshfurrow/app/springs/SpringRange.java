package freshfurrow.app.springs;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Springs by number, counted from 1.
 *
 * @param first 1 or more
 * @param last not before {@code first}
 */
public record SpringRange(int first, int last) {
    /** The largest number that may be asked for. */
    public static final int MOST = 1_000_000;

    public List<Integer> numbers() {
        return IntStream.rangeClosed(first, last).boxed().toList();
    }
}

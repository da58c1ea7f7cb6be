package freshfurrow.app.seasons;

import java.util.List;
import java.util.stream.IntStream;

/**
 * One of so many slices of a list, which take turns: each thing in the list is in one of them.
 *
 * @param number of this slice, 1 to {@code slices}
 * @param slices 1 or more
 */
public record Slice(int number, int slices) {
    public static final Slice ALL = new Slice(1, 1);

    public Slice {
        if (number < 1 || number > slices) {
            throw new IllegalArgumentException("slice " + number + " of " + slices);
        }
    }

    <T> List<T> of(List<T> all) {
        return IntStream.range(0, all.size())
                .filter(index -> index % slices == number - 1)
                .mapToObj(all::get)
                .toList();
    }
}

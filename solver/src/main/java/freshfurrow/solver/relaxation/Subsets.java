package freshfurrow.solver.relaxation;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** All subsets of a small set but the empty one. */
final class Subsets {
    private Subsets() {}

    static <T> List<Set<T>> of(Set<T> all) {
        List<T> elements = List.copyOf(all);
        List<Set<T>> subsets = new ArrayList<>();
        for (int bits = 1; bits < 1 << elements.size(); bits++) {
            Set<T> subset = new LinkedHashSet<>();
            for (int i = 0; i < elements.size(); i++) {
                if ((bits >> i & 1) == 1) {
                    subset.add(elements.get(i));
                }
            }
            subsets.add(subset);
        }
        return subsets;
    }
}

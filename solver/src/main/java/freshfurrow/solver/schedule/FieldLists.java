package freshfurrow.solver.schedule;

import freshfurrow.model.season.Season;
import java.util.List;

/**
 * Which fields each planter plants, in their order: indices of fields for each planter of a season. A field may stand in no
 * list.
 */
public record FieldLists(List<List<Integer>> byPlanter) {
    public FieldLists {
        byPlanter = byPlanter.stream().map(List::copyOf).toList();
    }

    public List<Integer> of(int planter) {
        return byPlanter.get(planter);
    }

    /** The same lists as ids of the season's fields. */
    public List<List<String>> ids(Season season) {
        return byPlanter.stream()
                .map(list -> list.stream()
                        .map(field -> season.fields().get(field).id())
                        .toList())
                .toList();
    }
}

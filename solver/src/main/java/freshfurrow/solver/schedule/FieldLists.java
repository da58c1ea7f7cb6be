package freshfurrow.solver.schedule;

import freshfurrow.model.season.Season;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Which fields each planter plants, in their order: indices of fields for each planter of a season. A field may stand in no
 * list.
 */
public record FieldLists(List<List<Integer>> byPlanter) {
    public FieldLists {
        byPlanter = byPlanter.stream().map(List::copyOf).toList();
    }

    /** Lists of ids of the season's fields. */
    public static FieldLists of(Season season, List<List<String>> ids) {
        Map<String, Integer> indexOf = new HashMap<>();
        for (int field = 0; field < season.fields().size(); field++) {
            indexOf.put(season.fields().get(field).id(), field);
        }
        return new FieldLists(ids.stream()
                .map(list -> list.stream().map(indexOf::get).toList())
                .toList());
    }

    public List<Integer> of(int planter) {
        return byPlanter.get(planter);
    }

    /** These lists less one field; the same when it stands in none. */
    public FieldLists without(int field) {
        return new FieldLists(byPlanter.stream()
                .map(list -> list.stream().filter(other -> other != field).toList())
                .toList());
    }

    /** These lists with one more field, before which so many others stand in the planter's list. */
    public FieldLists with(int planter, int index, int field) {
        List<Integer> longer = new ArrayList<>(byPlanter.get(planter));
        longer.add(index, field);
        List<List<Integer>> lists = new ArrayList<>(byPlanter);
        lists.set(planter, longer);
        return new FieldLists(lists);
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

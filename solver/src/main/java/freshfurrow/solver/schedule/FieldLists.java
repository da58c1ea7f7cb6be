package freshfurrow.solver.schedule;

import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Which fields each planter plants, in their order: indices of fields for each planter of a season. A field may stand in no
 * list.
 *
 * @param withoutExtract fields that are planted without extract
 */
public record FieldLists(List<List<Integer>> byPlanter, Set<Integer> withoutExtract) {
    public FieldLists {
        byPlanter = byPlanter.stream().map(List::copyOf).toList();
        withoutExtract = Set.copyOf(withoutExtract);
    }

    /** Lists in which all fields get extract. */
    public FieldLists(List<List<Integer>> byPlanter) {
        this(byPlanter, Set.of());
    }

    /** Lists of ids of the season's fields. */
    public static FieldLists of(Season season, List<List<String>> ids) {
        return of(season, PlantingOrders.withExtract(ids));
    }

    /** Orders of the season's fields; those that it does not have are left out. */
    public static FieldLists of(Season season, PlantingOrders orders) {
        Map<String, Integer> indexOf = new HashMap<>();
        for (int field = 0; field < season.fields().size(); field++) {
            indexOf.put(season.fields().get(field).id(), field);
        }
        return new FieldLists(
                orders.byPlanter().stream()
                        .map(list -> list.stream()
                                .map(indexOf::get)
                                .filter(Objects::nonNull)
                                .toList())
                        .toList(),
                orders.withoutExtract().stream()
                        .map(indexOf::get)
                        .filter(Objects::nonNull)
                        .collect(Collectors.toSet()));
    }

    /** Lists of entries, as a timeline plays them. */
    public static FieldLists ofEntries(CompiledSeason season, List<List<Integer>> entries) {
        return new FieldLists(
                entries.stream()
                        .map(list -> list.stream().map(season::named).toList())
                        .toList(),
                entries.stream()
                        .flatMap(List::stream)
                        .filter(season::isWithout)
                        .map(season::named)
                        .collect(Collectors.toSet()));
    }

    public List<Integer> of(int planter) {
        return byPlanter.get(planter);
    }

    /** Other lists, with the same fields without extract. */
    public FieldLists with(List<List<Integer>> lists) {
        return new FieldLists(lists, withoutExtract);
    }

    /** These lists less one field; the same when it stands in none. */
    public FieldLists without(int field) {
        return with(byPlanter.stream()
                .map(list -> list.stream().filter(other -> other != field).toList())
                .toList());
    }

    /** These lists with one more field, before which so many others stand in the planter's list. */
    public FieldLists with(int planter, int index, int field) {
        List<Integer> longer = new ArrayList<>(byPlanter.get(planter));
        longer.add(index, field);
        List<List<Integer>> lists = new ArrayList<>(byPlanter);
        lists.set(planter, longer);
        return with(lists);
    }

    /** The same lists with just these fields without extract. */
    public FieldLists goingWithout(Set<Integer> fields) {
        return new FieldLists(byPlanter, fields);
    }

    /** The entry of a field in the lists of a timeline. */
    int entry(CompiledSeason season, int field) {
        return withoutExtract.contains(field) ? season.without(field) : field;
    }

    /** The same as orders of the season's fields. */
    public PlantingOrders orders(Season season) {
        Set<String> without = new HashSet<>();
        byPlanter.forEach(list -> list.stream()
                .filter(withoutExtract::contains)
                .forEach(field -> without.add(season.fields().get(field).id())));
        return new PlantingOrders(ids(season), without);
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

package freshfurrow.desk.season;

import freshfurrow.model.quantity.Kind;
import freshfurrow.model.quantity.WrittenQuantity;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The units that a season's people use: those that most of its quantities of a kind have, else those that go with its areas. */
final class UsualUnits {
    private static final List<String> METRIC = List.of(
            "ha", "L", "kg", "m", "km/h", "L/ha", "kg/ha", "ha/h", "L/min", "mm", "d/mm", "min/kg", "min/ha", "/km",
            "/kg", "/ha", "/ha/d");

    private final Map<Kind, String> most;
    private final boolean isMetric;

    private UsualUnits(Map<Kind, String> most, boolean isMetric) {
        this.most = most;
        this.isMetric = isMetric;
    }

    /** @param tree a season as it is written */
    static UsualUnits in(Map<String, ?> tree, SeasonSchema schema) {
        List<Map.Entry<Kind, String>> units = new ArrayList<>();
        gather(tree, List.of(), schema, units);
        Map<Kind, String> most = units.stream()
                .collect(Collectors.groupingBy(
                        Map.Entry::getKey,
                        Collectors.collectingAndThen(
                                Collectors.groupingBy(Map.Entry::getValue, Collectors.counting()),
                                counts -> counts.entrySet().stream()
                                        .max(Map.Entry.<String, Long>comparingByValue()
                                                .thenComparing(Map.Entry.comparingByKey(Comparator.reverseOrder())))
                                        .orElseThrow()
                                        .getKey())));
        long metric =
                units.stream().filter(unit -> METRIC.contains(unit.getValue())).count();
        return new UsualUnits(
                most,
                metric * 2
                        > units.stream()
                                .filter(unit -> unit.getKey() != Kind.TIME)
                                .count());
    }

    private static void gather(
            Object node, List<String> path, SeasonSchema schema, List<Map.Entry<Kind, String>> units) {
        if (node instanceof Map<?, ?> map) {
            map.forEach((key, value) -> {
                List<String> longer = new ArrayList<>(path);
                longer.add(String.valueOf(key));
                gather(value, longer, schema, units);
            });
        } else if (node instanceof Collection<?> items) {
            List<String> longer = new ArrayList<>(path);
            longer.add("1");
            items.forEach(item -> gather(item, longer, schema, units));
        } else {
            schema.kindAt(path).ifPresent(kind -> WrittenQuantity.parse(String.valueOf(node))
                    .map(WrittenQuantity::unit)
                    .filter(kind::has)
                    .ifPresent(unit -> units.add(Map.entry(kind, unit))));
        }
    }

    /** The unit that is meant where none is typed. */
    String of(Kind kind) {
        return most.getOrDefault(
                kind,
                kind.symbols().stream()
                        .filter(symbol -> kind == Kind.TIME || METRIC.contains(symbol) == isMetric)
                        .findFirst()
                        .orElse(""));
    }
}

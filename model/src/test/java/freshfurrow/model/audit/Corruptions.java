package freshfurrow.model.audit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Pattern;

/**
 * Every way in which a single thing of a plan file may be wrong: another figure, time, name or answer, a key or an entry that is gone,
 * stands twice or has changed places with the next. Each is done to the tree itself and taken back when it has been tried.
 */
final class Corruptions {
    private static final Pattern TIME = Pattern.compile("\\d{4}-\\d\\d-\\d\\dT.*");
    private static final Pattern DATE = Pattern.compile("\\d{4}-\\d\\d-\\d\\d");
    private static final DateTimeFormatter SECONDS = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss");
    private static final List<String> WAITS = List.of("rig", "wet", "window", "hours", "compost", "water");
    private static final Set<String> BY_NAME =
            Set.of("/names", "/planters", "/rigs", "/lots", "/drawnL", "/promised", "/start/planters", "/start/rigs");

    /**
     * One corruption, done to the tree while it is handed out.
     *
     * @param place where, with a star for places in a list and for names
     * @param what is done there
     */
    record Corruption(String place, String what) {
        @Override
        public String toString() {
            return place + ' ' + what;
        }
    }

    private final Map<String, Set<String>> namesByKey = new HashMap<>();
    private final Consumer<Corruption> tried;

    private Corruptions(Consumer<Corruption> tried) {
        this.tried = tried;
    }

    /** Hands out each corruption of a plan in turn; the tree holds it until the call returns. */
    static void of(JsonNode plan, Consumer<Corruption> tried) {
        Corruptions corruptions = new Corruptions(tried);
        corruptions.collectNames("", plan);
        corruptions.of("", plan);
    }

    private void collectNames(String key, JsonNode node) {
        if (node.isTextual()) {
            namesByKey.computeIfAbsent(key, any -> new LinkedHashSet<>()).add(node.asText());
        }
        node.properties().forEach(entry -> collectNames(entry.getKey(), entry.getValue()));
        node.elements().forEachRemaining(element -> {
            if (node.isArray()) {
                collectNames(key, element);
            }
        });
    }

    private void of(String path, JsonNode node) {
        if (node instanceof ObjectNode object) {
            boolean named = BY_NAME.stream().anyMatch(path::endsWith);
            for (String key : keys(object)) {
                String place = path + '/' + (named ? "*" : key);
                JsonNode value = object.get(key);
                object.remove(key);
                tried.accept(new Corruption(place, "dropped"));
                object.set(key, value);
                if (named) {
                    object.remove(key);
                    object.set("nowhere", value);
                    tried.accept(new Corruption(place, "renamed"));
                    object.remove("nowhere");
                    object.set(key, value);
                }
                for (Other other : others(key, value)) {
                    object.set(key, other.value());
                    tried.accept(new Corruption(place, other.what()));
                }
                object.set(key, value);
                of(place, value);
            }
        } else if (node instanceof ArrayNode array) {
            String key = path.substring(path.lastIndexOf('/') + 1);
            for (int i = 0; i < array.size(); i++) {
                JsonNode value = array.remove(i);
                tried.accept(new Corruption(path + "/*", "dropped"));
                array.insert(i, value);
                array.insert(i, value.deepCopy());
                tried.accept(new Corruption(path + "/*", "twice"));
                array.remove(i);
                if (i + 1 < array.size()) {
                    array.insert(i, array.remove(i + 1));
                    tried.accept(new Corruption(path + "/*", "changed places"));
                    array.insert(i, array.remove(i + 1));
                }
                for (Other other : others(key, value)) {
                    array.set(i, other.value());
                    tried.accept(new Corruption(path + "/*", other.what()));
                }
                array.set(i, value);
                of(path + "/*", value);
            }
            if (!array.isEmpty()) {
                List<JsonNode> all = new ArrayList<>();
                array.forEach(all::add);
                array.removeAll();
                tried.accept(new Corruption(path, "emptied"));
                array.addAll(all);
            }
        }
    }

    private static List<String> keys(ObjectNode object) {
        List<String> keys = new ArrayList<>();
        object.fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    private record Other(String what, JsonNode value) {}

    private List<Other> others(String key, JsonNode value) {
        List<Other> others = new ArrayList<>();
        if (value.isBoolean()) {
            others.add(new Other("the other answer", BooleanNode.valueOf(!value.asBoolean())));
        } else if (value.isNumber()) {
            BigDecimal figure = value.decimalValue();
            for (String by : List.of("0.1", "1", "-1", "1000")) {
                others.add(number("by " + by, figure.add(new BigDecimal(by))));
            }
            others.add(number("doubled", figure.add(figure)));
            others.add(number("halved", figure.divide(BigDecimal.valueOf(2))));
            others.add(number("0", BigDecimal.ZERO));
            others.removeIf(other -> other.value().decimalValue().compareTo(figure) == 0);
        } else if (value.isTextual() && TIME.matcher(value.asText()).matches()) {
            LocalDateTime time = LocalDateTime.parse(value.asText());
            for (long s : List.of(1L, -1L, 3600L, -3600L, 86_400L, -86_400L)) {
                others.add(text("by " + s + " s", time.plusSeconds(s).format(SECONDS)));
            }
            others.add(text("in year 9999", time.withYear(9999).format(SECONDS)));
            others.add(text("in year 1", time.withYear(1).format(SECONDS)));
        } else if (value.isTextual() && DATE.matcher(value.asText()).matches()) {
            LocalDate date = LocalDate.parse(value.asText());
            for (long d : List.of(1L, -1L)) {
                others.add(text("by " + d + " d", date.plusDays(d).toString()));
            }
            others.add(text("in year 9999", date.withYear(9999).toString()));
            others.add(text("in year 1", date.withYear(1).toString()));
        } else if (value.isTextual()) {
            if (key.equals("why") && WAITS.contains(value.asText())) {
                WAITS.stream()
                        .filter(why -> !why.equals(value.asText()))
                        .forEach(why -> others.add(text("is " + why + ", was " + value.asText(), why)));
                return others;
            }
            others.add(text("unknown", "nowhere"));
            namesByKey.getOrDefault(key, Set.of()).stream()
                    .filter(other -> !other.equals(value.asText()))
                    .limit(3)
                    .forEach(other -> others.add(text("another", other)));
        }
        return others;
    }

    private static Other number(String what, BigDecimal figure) {
        return new Other(what, DecimalNode.valueOf(figure));
    }

    private static Other text(String what, String text) {
        return new Other(what, TextNode.valueOf(text));
    }
}

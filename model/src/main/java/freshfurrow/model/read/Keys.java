package freshfurrow.model.read;

import freshfurrow.model.quantity.Kind;
import freshfurrow.model.quantity.WrittenQuantity;
import freshfurrow.model.read.tree.Node;
import freshfurrow.model.read.tree.Place;
import freshfurrow.model.text.Unseen;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Pattern;

/**
 * The keys of one map of a season file, taken one by one. A missing or wrong value becomes a problem and an empty result; keys
 * that nobody took are problems in the end.
 */
final class Keys {
    private static final Pattern ID = Pattern.compile("[A-Za-z0-9][A-Za-z0-9_-]{0,39}");

    private static final int LONGEST_NAME = 80;

    private final Place place;
    private final Map<String, Node> entries;
    private final Map<String, Place> removed;
    private final Problems problems;
    private final UnitsSeen units;
    private final Set<String> known = new LinkedHashSet<>();

    private Keys(
            Place place, Map<String, Node> entries, Map<String, Place> removed, Problems problems, UnitsSeen units) {
        this.place = place;
        this.entries = entries;
        this.removed = removed;
        this.problems = problems;
        this.units = units;
    }

    /** The keys of a node; when it is no map, that is a problem and there are none. */
    static Keys of(Node node, Problems problems, UnitsSeen units) {
        if (node instanceof Node.Mapping mapping) {
            return new Keys(node.place(), mapping.entries(), mapping.removed(), problems, units);
        }
        problems.add(
                node.place(), "is " + node.noun() + " where keys with values belong", "write key: value pairs here");
        return new Keys(node.place(), Map.of(), Map.of(), problems, units);
    }

    Place place() {
        return place;
    }

    UnitsSeen units() {
        return units;
    }

    Problems problems() {
        return problems;
    }

    boolean has(String key) {
        known.add(key);
        return entries.containsKey(key) && !(entries.get(key) instanceof Node.Nothing);
    }

    /** Where the key stands, or would. */
    Place at(String key) {
        Node node = entries.get(key);
        if (node != null) {
            return node.place();
        }
        return removed.getOrDefault(key, new Place(place.file(), place.line(), path(key)));
    }

    void problem(String key, String reason, String remedy) {
        problems.add(at(key), reason, remedy);
    }

    Optional<Node> node(String key) {
        return has(key) ? Optional.of(entries.get(key)) : Optional.empty();
    }

    Optional<Node> needed(String key, String remedy) {
        if (!has(key)) {
            problem(key, Problem.MISSING, remedy);
        }
        return node(key);
    }

    Optional<Keys> keys(String key) {
        return node(key).map(node -> of(node, problems, units));
    }

    /** What stands under each id of a map of things; ids that are no ids are problems. */
    Map<String, Keys> things(String key, String noun, boolean needed) {
        Optional<Node> node = needed ? needed(key, "write at least one " + noun) : node(key);
        Map<String, Keys> things = new LinkedHashMap<>();
        node.ifPresent(found -> {
            Keys ids = of(found, problems, units);
            if (needed && found instanceof Node.Mapping && ids.entries.isEmpty()) {
                problem(key, "is empty", "write at least one " + noun);
            }
            ids.entries.forEach((id, thing) -> {
                if (thing instanceof Node.Nothing) {
                    problems.add(thing.place(), "is empty", "write what this " + noun + " is like, or leave it out");
                    return;
                }
                checkId(id, thing.place(), problems);
                things.put(id, of(thing, problems, units));
            });
        });
        return things;
    }

    static void checkId(String id, Place at, Problems problems) {
        if (!ID.matcher(id).matches()) {
            problems.add(
                    at,
                    "'" + (id.length() > 40 ? id.substring(0, 40) + "…" : id) + "' is not an id",
                    "use 1 to 40 letters, digits, - and _, starting with a letter or digit");
        }
    }

    Optional<String> text(String key) {
        return node(key).flatMap(node -> text(node, problems));
    }

    Optional<String> neededText(String key, String example) {
        String remedy = "write it like " + key + ": " + example;
        Optional<String> text = needed(key, remedy).flatMap(node -> text(node, problems));
        if (text.isPresent() && text.get().isBlank()) {
            problem(key, "is empty", remedy);
            return Optional.empty();
        }
        return text;
    }

    /** A name as people know it, which must be fit to be shown. */
    Optional<String> name(Optional<String> name) {
        if (name.isPresent() && name.get().length() > LONGEST_NAME) {
            problem("name", "is longer than " + LONGEST_NAME + " letters", "shorten it");
        } else if (name.isPresent() && Unseen.isIn(name.get())) {
            problem("name", "'" + name.get() + "' contains an invisible character", "leave it out");
        }
        return name;
    }

    static Optional<String> text(Node node, Problems problems) {
        if (node instanceof Node.Text text) {
            return Optional.of(text.text());
        }
        problems.add(node.place(), "is " + node.noun() + " where one value belongs", "write one value here");
        return Optional.empty();
    }

    /** One value or a list of values. */
    List<Node.Text> texts(String key) {
        List<Node.Text> texts = new ArrayList<>();
        node(key).ifPresent(node -> {
            List<Node> items = node instanceof Node.Sequence sequence ? sequence.items() : List.of(node);
            for (Node item : items) {
                if (item instanceof Node.Text text) {
                    texts.add(text);
                } else {
                    problems.add(
                            item.place(), "is " + item.noun() + " where one value belongs", "write one value here");
                }
            }
        });
        return texts;
    }

    /** A quantity that must be there, in SI units, within the range. */
    Optional<Double> quantity(String key, Kind kind, Range range) {
        if (!has(key)) {
            problems.add(
                    at(key),
                    Problem.MISSING,
                    () -> "write " + kind.noun() + " like " + key + ": " + units.example(kind));
        }
        return node(key).flatMap(node -> quantity(node, kind, range));
    }

    /** A quantity that may be left out. */
    Optional<Double> optionalQuantity(String key, Kind kind, Range range) {
        return node(key).flatMap(node -> quantity(node, kind, range));
    }

    Optional<Double> number(String key, Range range) {
        return node(key).flatMap(node -> text(node, problems)).flatMap(text -> {
            Optional<WrittenQuantity> written = WrittenQuantity.parse(text);
            if (written.isEmpty() || !written.get().unit().isEmpty()) {
                problem(key, "'" + text + "' is not a plain number", "write a number like " + range.example());
                return Optional.empty();
            }
            return inRange(at(key), text, written.get().figure(), range);
        });
    }

    private Optional<Double> quantity(Node node, Kind kind, Range range) {
        Optional<String> text = text(node, problems);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Optional<WrittenQuantity> written = WrittenQuantity.parse(text.get());
        Supplier<String> remedy = () -> "write " + kind.noun() + " like " + units.example(kind);
        if (written.isEmpty()) {
            boolean separated = text.get().matches("[^,_]*[0-9][,_][0-9].*");
            problems.add(
                    node.place(),
                    "'" + text.get() + "' is not a quantity",
                    separated
                            ? () -> remedy.get() + ", with a point in decimals and nothing between thousands"
                            : remedy);
            return Optional.empty();
        }
        String unit = written.get().unit();
        if (unit.isEmpty()) {
            problems.add(node.place(), text.get() + " has no unit", remedy);
            return Optional.empty();
        }
        if (!kind.has(unit)) {
            problems.add(
                    node.place(),
                    unit + " is not a unit of " + kind.noun(),
                    () -> "use one of " + String.join(", ", kind.symbols()) + ", like " + units.example(kind));
            return Optional.empty();
        }
        units.saw(kind, unit);
        return inRange(node.place(), text.get(), kind.toSi(written.get().figure(), unit), range);
    }

    private Optional<Double> inRange(Place at, String text, double figure, Range range) {
        if (!range.holds(figure)) {
            problems.add(at, text + " is out of range", "use " + range.words());
            return Optional.empty();
        }
        return Optional.of(figure);
    }

    /** To be called when all known keys were asked for: the others are problems. */
    void refuseOthers() {
        entries.forEach((key, node) -> {
            if (!known.contains(key)) {
                String remedy = Nearest.to(key, known)
                        .map(nearest -> "did you mean " + nearest + "?")
                        .orElse("known here: " + String.join(", ", known));
                problems.add(node.place(), "is not a known key", remedy);
            }
        });
    }

    private String path(String key) {
        return place.path().isEmpty() ? key : place.path() + "." + key;
    }
}

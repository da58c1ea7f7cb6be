package freshfurrow.model.edit;

import freshfurrow.model.read.tree.FileProblem;
import freshfurrow.model.read.tree.Node;
import freshfurrow.model.read.tree.Place;
import freshfurrow.model.read.tree.TextFile;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A GeoJSON file of fields (RFC 7946), one a feature, that is edited by position. */
final class MapFields implements FieldsText {
    private static final String FEATURES = "features";
    private static final String PROPERTIES = "properties";
    private static final String GEOMETRY = "geometry";
    private static final String ID = "id";

    private final TreeText text;

    private MapFields(TreeText text) {
        this.text = text;
    }

    static MapFields of(TextFile file) throws FileProblem {
        return new MapFields(TreeText.json(file));
    }

    @Override
    public TextFile file() {
        return text.file();
    }

    /** The properties of each feature, and its geometry as one more key. */
    @Override
    public Node.Mapping tree() {
        Map<String, Node> fields = new LinkedHashMap<>();
        for (Node node : features()) {
            if (node instanceof Node.Mapping feature && id(feature) instanceof Node.Text id) {
                Map<String, Node> keys = new LinkedHashMap<>();
                if (feature.entries().get(PROPERTIES) instanceof Node.Mapping properties) {
                    keys.putAll(properties.entries());
                }
                keys.remove(ID);
                Optional.ofNullable(feature.entries().get(GEOMETRY)).ifPresent(shape -> keys.put(GEOMETRY, shape));
                fields.putIfAbsent(id.text(), new Node.Mapping(feature.place(), keys));
            }
        }
        return new Node.Mapping(new Place(file().name(), 1, "fields"), fields);
    }

    private List<Node> features() {
        return Trees.at(text.tree(), List.of(FEATURES)).orElse(text.tree()) instanceof Node.Sequence features
                ? features.items()
                : List.of();
    }

    private static Node id(Node.Mapping feature) {
        return Trees.at(feature, List.of(PROPERTIES, ID))
                .or(() -> Trees.at(feature, List.of(ID)))
                .orElse(new Node.Nothing(feature.place()));
    }

    @Override
    public FieldsText with(Edit edit) throws FileProblem {
        String id = edit.path().get(0);
        List<String> found = numbers(id);
        if (found.size() > 1) {
            throw problem(edit, "is the id of " + found.size() + " features", "give every field an id of its own");
        }
        if (found.isEmpty()) {
            return new MapFields(text.with(new Edit.Append(List.of(FEATURES), feature(edit))));
        }
        List<String> path = new ArrayList<>(List.of(FEATURES, found.get(0)));
        if (edit.path().size() > 1) {
            path.addAll(within(found.get(0), edit.path().get(1)));
            path.addAll(edit.path().subList(2, edit.path().size()));
        } else if (!(edit instanceof Edit.Remove)) {
            throw problem(edit, "is a map of keys", "set its keys");
        }
        return new MapFields(text.with(edit.at(path)));
    }

    private List<String> numbers(String id) {
        List<String> numbers = new ArrayList<>();
        List<Node> features = features();
        for (int i = 0; i < features.size(); i++) {
            if (features.get(i) instanceof Node.Mapping feature
                    && id(feature) instanceof Node.Text its
                    && its.text().equals(id)) {
                numbers.add(String.valueOf(i + 1));
            }
        }
        return numbers;
    }

    /** Where a key of a field is in its feature. */
    private List<String> within(String number, String key) {
        boolean idOfFeature = key.equals(ID)
                && Trees.at(text.tree(), List.of(FEATURES, number, PROPERTIES, ID))
                        .isEmpty();
        return key.equals(GEOMETRY) || idOfFeature ? List.of(key) : List.of(PROPERTIES, key);
    }

    private Value feature(Edit edit) throws FileProblem {
        if (edit instanceof Edit.Remove || (edit.path().size() == 1 && !isMap(edit))) {
            throw problem(edit, "is not in the file", "look at the season as it is now");
        }
        Value.Entries keys = (Value.Entries)
                (edit.path().size() == 1
                        ? ((Edit.Set) edit).value()
                        : TreeText.under(edit.path().subList(1, edit.path().size()), TreeChanges.value(edit)));
        Map<String, Value> properties = new LinkedHashMap<>();
        properties.put(ID, Value.of(edit.path().get(0)));
        properties.putAll(keys.entries());
        Map<String, Value> feature = new LinkedHashMap<>();
        feature.put("type", Value.of("Feature"));
        Optional<Value> shape = Optional.ofNullable(properties.remove(GEOMETRY));
        feature.put(PROPERTIES, new Value.Entries(properties));
        shape.ifPresent(its -> feature.put(GEOMETRY, its));
        return new Value.Entries(feature);
    }

    private static boolean isMap(Edit edit) {
        return edit instanceof Edit.Set set && set.value() instanceof Value.Entries;
    }

    private FileProblem problem(Edit edit, String reason, String remedy) {
        return new FileProblem(new Place(file().name(), 0, String.join(".", edit.path())), reason, remedy);
    }
}

package freshfurrow.model.read;

import freshfurrow.model.quantity.Kind;
import freshfurrow.model.read.tree.Node;
import freshfurrow.model.season.Crop;
import freshfurrow.model.season.DateWindow;
import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.GeoPoint;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Fields from their keys, with what they leave out taken from their crop. */
final class FieldReader {
    static final Range AREA = Range.between(0.001, 20_000, "0.003 to 49,000 ac (0.001 to 20,000 ha)");

    private static final int NAMED = 8;

    private final Problems problems;
    private final UnitsSeen units;
    private final Places places;
    private final Map<String, Crop> crops;
    private final Set<String> windowless;
    private final Set<String> recipes;
    private final Set<String> planters;

    /**
     * @param crops those that are right
     * @param windowless crops that have no window of their own
     * @param recipes ids of all recipes, right or wrong; likewise planters
     */
    FieldReader(
            Problems problems,
            UnitsSeen units,
            Places places,
            Map<String, Crop> crops,
            Set<String> windowless,
            Set<String> recipes,
            Set<String> planters) {
        this.problems = problems;
        this.units = units;
        this.places = places;
        this.crops = crops;
        this.windowless = windowless;
        this.recipes = recipes;
        this.planters = planters;
    }

    List<Field> read(List<FieldSource> sources) {
        List<Field> fields = new ArrayList<>();
        sources.forEach(source -> read(source).ifPresent(fields::add));
        return fields;
    }

    private Optional<Field> read(FieldSource source) {
        int before = problems.count();
        Keys keys = Keys.of(source.keys(), problems, units);
        String id = source.id();
        source.shape().ifPresent(shape -> places.put(id, shape.entrance()));
        boolean drawn = source.shape().isPresent();
        if (drawn) {
            places.declare(id, keys.place());
        } else {
            places.point(id, keys);
        }
        Optional<String> name = keys.name(keys.text("name").filter(text -> !text.isBlank()));
        Optional<Double> area = drawn && !keys.has("area")
                ? source.shape().map(FieldShape::areaHa)
                : keys.quantity("area", Kind.AREA, AREA);
        Optional<Crop> crop = crop(keys);
        Optional<DateWindow> window = keys.has("window")
                ? keys.node("window").flatMap(node -> Times.window(node, problems))
                : crop.flatMap(Crop::window);
        if (crop.isPresent() && windowless.contains(crop.get().id()) && !keys.has("window")) {
            keys.problem("window", "is missing", "write one here or in the crop, like window: 2027-04-20/2027-05-12");
        }
        Optional<String> recipe = recipe(keys, crop);
        Drainage drainage = drainage(keys);
        Optional<Double> lateWeight = keys.number("lateWeight", SeasonBinder.LATE_WEIGHT);
        Optional<Double> extractWeight = keys.number("extractWeight", SeasonBinder.LATE_WEIGHT);
        Set<String> allowed = allowed(keys);
        keys.refuseOthers();
        if (problems.count() > before || area.isEmpty() || window.isEmpty() || recipe.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Field(
                id,
                name.orElse(id),
                area.get(),
                places.at(id),
                source.shape().map(FieldShape::rings).orElse(List.of()),
                crop.orElseThrow().id(),
                window.get(),
                recipe.get(),
                drainage,
                lateWeight.orElse(crop.orElseThrow().lateWeight()),
                extractWeight.orElse(crop.orElseThrow().extractWeight()),
                allowed,
                List.of()));
    }

    private Optional<Crop> crop(Keys keys) {
        Optional<String> id = keys.neededText("crop", "corn");
        if (id.isPresent() && !crops.containsKey(id.get())) {
            keys.problem("crop", "there is no crop " + id.get(), unknown(id.get(), crops.keySet()));
        }
        return id.map(crops::get);
    }

    private Optional<String> recipe(Keys keys, Optional<Crop> crop) {
        Optional<String> id = keys.text("recipe");
        if (id.isPresent()) {
            if (!recipes.contains(id.get())) {
                keys.problem("recipe", "there is no recipe " + id.get(), unknown(id.get(), recipes));
            }
            return id;
        }
        Optional<String> ofCrop = crop.flatMap(Crop::recipe);
        if (ofCrop.isPresent()) {
            return ofCrop;
        }
        if (recipes.size() > 1) {
            keys.problem(
                    "recipe", "is missing and there are several", "write which recipe this field or its crop uses");
        }
        return recipes.stream().findFirst();
    }

    private Drainage drainage(Keys keys) {
        Optional<String> text = keys.text("drainage");
        if (text.isEmpty()) {
            return Drainage.MODERATE;
        }
        for (Drainage drainage : Drainage.values()) {
            if (drainage.name().equals(text.get().toUpperCase(Locale.ROOT))) {
                return drainage;
            }
        }
        keys.problem("drainage", "'" + text.get() + "' is not a drainage class", "write well, moderate or poor");
        return Drainage.MODERATE;
    }

    /** Ids in a list, or in one text parted by spaces, commas or semicolons. */
    private Set<String> allowed(Keys keys) {
        Set<String> allowed = new LinkedHashSet<>();
        int before = problems.count();
        for (Node.Text text : keys.texts("planters")) {
            for (String id : text.text().split("[\\s,;]+", -1)) {
                if (id.isEmpty()) {
                    continue;
                }
                if (planters.contains(id)) {
                    allowed.add(id);
                } else {
                    problems.add(text.place(), "there is no planter " + id, unknown(id, planters));
                }
            }
        }
        if (keys.has("planters") && allowed.isEmpty() && problems.count() == before) {
            keys.problem("planters", "is empty", "name a planter, or leave it out if all planters may plant the field");
        }
        return allowed;
    }

    static String unknown(String id, Collection<String> known) {
        return Nearest.to(id, known)
                .map(nearest -> "did you mean " + nearest + "?")
                .orElse(known.isEmpty() ? "add it to the season first" : "known are " + few(known));
    }

    private static String few(Collection<String> words) {
        String few = words.stream().limit(NAMED).collect(Collectors.joining(", "));
        return words.size() > NAMED ? few + " and " + (words.size() - NAMED) + " more" : few;
    }

    /** A drawn field: entrance, rings and area. */
    record FieldShape(GeoPoint entrance, List<List<GeoPoint>> rings, double areaHa) {}

    /** One field of any kind of file: its id, its keys but for the id, and its shape when it is drawn. */
    record FieldSource(String id, Node keys, Optional<FieldShape> shape) {}
}

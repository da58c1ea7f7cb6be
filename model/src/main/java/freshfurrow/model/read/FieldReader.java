package freshfurrow.model.read;

import freshfurrow.model.quantity.Kind;
import freshfurrow.model.read.tree.Node;
import freshfurrow.model.season.Crop;
import freshfurrow.model.season.DateWindow;
import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Fixed;
import freshfurrow.model.season.GeoPoint;
import freshfurrow.model.season.Work;
import java.util.ArrayList;
import java.util.Arrays;
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
    private final Map<Work, Set<String>> machines;

    /**
     * @param crops those that are right
     * @param windowless crops that have no window of their own
     * @param recipes ids of all recipes, right or wrong
     * @param machines ids of all machines, right or wrong, by what they do to fields
     */
    FieldReader(
            Problems problems,
            UnitsSeen units,
            Places places,
            Map<String, Crop> crops,
            Set<String> windowless,
            Set<String> recipes,
            Map<Work, Set<String>> machines) {
        this.problems = problems;
        this.units = units;
        this.places = places;
        this.crops = crops;
        this.windowless = windowless;
        this.recipes = recipes;
        this.machines = machines;
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
        Work work = work(keys).or(() -> crop.map(Crop::work)).orElse(Work.PLANT);
        Set<String> allowed = allowed(keys, work);
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
                work,
                List.of(),
                Fixed.NOT));
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

    /** What is said to be done; empty when nothing is said. */
    static Optional<Work> work(Keys keys) {
        Optional<String> text = keys.text("work");
        Optional<Work> work = text.flatMap(said -> Arrays.stream(Work.values())
                .filter(one -> one.key().equals(said.toLowerCase(Locale.ROOT)))
                .findFirst());
        if (text.isPresent() && work.isEmpty()) {
            keys.problem("work", "'" + text.get() + "' is not done to fields", "write plant or spray");
        }
        return work;
    }

    private Set<String> allowed(Keys keys, Work work) {
        for (Work other : Work.values()) {
            if (keys.has(key(other)) && other != work) {
                keys.problem(
                        key(other),
                        "is for fields with work: " + other.key() + ", but this one has work: " + work.key(),
                        "write " + key(work) + ", or work: " + other.key());
            }
        }
        if (ids(work).isEmpty() && !machines.values().stream().allMatch(Set::isEmpty)) {
            keys.problem(
                    "work",
                    "the season has no " + noun(work) + " to " + work.key() + " this field",
                    "add a " + noun(work) + " under " + key(work) + ", or leave the field out");
            return Set.of();
        }
        return named(keys, work);
    }

    private Set<String> ids(Work work) {
        return machines.getOrDefault(work, Set.of());
    }

    private static String noun(Work work) {
        return work.key() + "er";
    }

    private static String key(Work work) {
        return noun(work) + "s";
    }

    /** Ids in a list, or in one text parted by spaces, commas or semicolons. */
    private Set<String> named(Keys keys, Work work) {
        Set<String> allowed = new LinkedHashSet<>();
        Set<String> known = ids(work);
        int before = problems.count();
        for (Node.Text text : keys.texts(key(work))) {
            for (String id : text.text().split("[\\s,;]+", -1)) {
                if (id.isEmpty()) {
                    continue;
                }
                if (known.contains(id)) {
                    allowed.add(id);
                } else {
                    problems.add(text.place(), "there is no " + noun(work) + " " + id, unknown(id, known));
                }
            }
        }
        if (keys.has(key(work)) && allowed.isEmpty() && problems.count() == before) {
            keys.problem(
                    key(work),
                    "is empty",
                    "name a " + noun(work) + ", or leave it out if all " + key(work) + " may " + work.key()
                            + " the field");
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

package freshfurrow.model.plan;

import com.fasterxml.jackson.databind.JsonNode;
import freshfurrow.model.text.Unseen;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.StringJoiner;

/**
 * A value of a JSON file together with where it stands, so that whatever is wrong with it can be said in one line.
 */
record JsonPlace(Path file, JsonPath path, JsonNode value) {
    private static final int LONGEST_TEXT = 1_000;
    private static final int LONGEST_KEY = 100;
    private static final double LARGEST_FIGURE = 1e11;
    private static final int LARGEST_COUNT = 10_000_000;

    /** One value in a place, read. */
    @FunctionalInterface
    interface Reader<T> {
        T read(JsonPlace place) throws PlanFileException;
    }

    /** This place as an object that has exactly these keys. */
    JsonPlace with(String... keys) throws PlanFileException {
        return withAndPerhaps(List.of(), keys);
    }

    /** This place as an object that has these keys, perhaps some of the optional ones, and no others. */
    JsonPlace withAndPerhaps(List<String> optional, String... keys) throws PlanFileException {
        requireObject();
        for (String key : keys) {
            if (!value.has(key)) {
                throw wrong("the key '" + key + "' is missing");
            }
        }
        List<String> required = Arrays.asList(keys);
        for (Map.Entry<String, JsonNode> entry : value.properties()) {
            String key = entry.getKey();
            if (!required.contains(key) && !optional.contains(key)) {
                List<String> known = new ArrayList<>(required);
                known.addAll(optional);
                throw wrong("unknown key '" + JsonPath.shown(key) + "', the keys here are " + String.join(", ", known));
            }
        }
        return this;
    }

    boolean has(String key) {
        return value.has(key);
    }

    /** What stands under a key. */
    JsonPlace at(String key) throws PlanFileException {
        requireObject();
        JsonNode child = value.get(key);
        if (child == null) {
            throw wrong("the key '" + key + "' is missing");
        }
        return new JsonPlace(file, path.key(key), child);
    }

    String text(String key) throws PlanFileException {
        return at(key).asText();
    }

    double number(String key) throws PlanFileException {
        return at(key).asNumber();
    }

    /** Empty when there is no such key. */
    OptionalDouble numberIfAny(String key) throws PlanFileException {
        return value.has(key) ? OptionalDouble.of(number(key)) : OptionalDouble.empty();
    }

    int count(String key) throws PlanFileException {
        JsonPlace place = at(key);
        if (!place.value.isIntegralNumber() || !place.value.canConvertToInt()) {
            throw place.unlike("a whole number");
        }
        if (Math.abs((long) place.value.intValue()) > LARGEST_COUNT) {
            throw place.unlike("a count of 10,000,000 at most");
        }
        return place.value.intValue();
    }

    long whole(String key) throws PlanFileException {
        JsonPlace place = at(key);
        if (!place.value.isIntegralNumber() || !place.value.canConvertToLong()) {
            throw place.unlike("a whole number");
        }
        return place.value.longValue();
    }

    boolean yesOrNo(String key) throws PlanFileException {
        JsonPlace place = at(key);
        if (!place.value.isBoolean()) {
            throw place.unlike("true or false");
        }
        return place.value.booleanValue();
    }

    /** What is made of this place; what its constructor refuses is said to be wrong here. */
    <T> T valid(Reader<T> reader) throws PlanFileException {
        try {
            return reader.read(this);
        } catch (IllegalArgumentException e) {
            throw wrong(String.valueOf(e.getMessage()));
        }
    }

    LocalDateTime time(String key) throws PlanFileException {
        JsonPlace place = at(key);
        try {
            LocalDateTime time = LocalDateTime.parse(place.asText(), PlanToJson.TIME);
            place.requireYear(time.getYear());
            return time;
        } catch (DateTimeParseException e) {
            throw place.unlike("a local date and time like \"2027-05-20T16:12:00\"");
        }
    }

    LocalDate date(String key) throws PlanFileException {
        JsonPlace place = at(key);
        try {
            LocalDate date = LocalDate.parse(place.asText());
            place.requireYear(date.getYear());
            return date;
        } catch (DateTimeParseException e) {
            throw place.unlike("a date like \"2027-05-20\"");
        }
    }

    private void requireYear(int year) throws PlanFileException {
        if (year < PlanFile.FIRST_YEAR || year > PlanFile.LAST_YEAR) {
            throw unlike("a year from " + PlanFile.FIRST_YEAR + " to " + PlanFile.LAST_YEAR);
        }
    }

    /** The name of a file, and not a way to some other folder. */
    String fileName(String key) throws PlanFileException {
        JsonPlace place = at(key);
        if (!place.value.isTextual() || !isBareName(place.value.textValue())) {
            throw place.unlike("the bare name of a file, without a folder");
        }
        return place.value.textValue();
    }

    private static boolean isBareName(String name) {
        try {
            Path path = Path.of(name);
            return !name.isBlank()
                    && path.getRoot() == null
                    && path.getNameCount() == 1
                    && path.toString().equals(name)
                    && !name.equals(".")
                    && !name.equals("..");
        } catch (InvalidPathException e) {
            return false;
        }
    }

    /** One of some values that have names. */
    <T> T oneOf(String key, Map<String, T> byName) throws PlanFileException {
        JsonPlace place = at(key);
        T found = byName.get(place.asText());
        if (found == null) {
            var names = new StringJoiner(", ");
            byName.keySet().forEach(names::add);
            throw place.unlike("one of " + names);
        }
        return found;
    }

    /** A list that may be missing, which is as good as an empty one. */
    <T> List<T> listIfAny(String key, Reader<T> reader) throws PlanFileException {
        return value.has(key) ? list(key, reader) : List.of();
    }

    <T> List<T> list(String key, Reader<T> reader) throws PlanFileException {
        JsonPlace place = at(key);
        if (!place.value.isArray()) {
            throw place.unlike("a list");
        }
        List<T> all = new ArrayList<>(place.value.size());
        for (JsonNode element : place.value) {
            all.add(reader.read(new JsonPlace(file, place.path.element(all.size()), element)));
        }
        return all;
    }

    <T> Map<String, T> map(String key, Reader<T> reader) throws PlanFileException {
        JsonPlace place = at(key);
        place.requireObject();
        Map<String, T> all = new LinkedHashMap<>();
        for (Map.Entry<String, JsonNode> entry : place.value.properties()) {
            place.requireReadable(entry.getKey(), LONGEST_KEY);
            all.put(entry.getKey(), reader.read(place.at(entry.getKey())));
        }
        return all;
    }

    String asText() throws PlanFileException {
        if (!value.isTextual()) {
            throw unlike("text");
        }
        requireReadable(value.textValue(), LONGEST_TEXT);
        return value.textValue();
    }

    private void requireReadable(String text, int longest) throws PlanFileException {
        if (text.length() > longest) {
            throw wrong("'" + JsonPath.shown(text) + "' is longer than " + longest + " letters");
        }
        if (Unseen.isIn(text)) {
            throw wrong("'" + JsonPath.shown(text) + "' contains an invisible character");
        }
    }

    double asNumber() throws PlanFileException {
        if (!value.isNumber() || !Double.isFinite(value.doubleValue())) {
            throw unlike("a number");
        }
        if (Math.abs(value.doubleValue()) > LARGEST_FIGURE) {
            throw unlike("a number of 100,000,000,000 at most");
        }
        return value.doubleValue();
    }

    private void requireObject() throws PlanFileException {
        if (!value.isObject()) {
            throw unlike("an object");
        }
    }

    private PlanFileException unlike(String expected) {
        return wrong("expected " + expected + ", found " + JsonPath.shown(value.isNull() ? "null" : found()));
    }

    private String found() {
        return value.isContainerNode() ? "a" + (value.isArray() ? " list" : "n object") : value.toString();
    }

    /** A problem of what is here. */
    PlanFileException wrong(String reason) {
        String where = path.toString();
        return new PlanFileException(file, where.isEmpty() ? "at the top" : where, reason, PlanFromJson.REMEDY);
    }
}

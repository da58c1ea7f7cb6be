package freshfurrow.desk.season;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import freshfurrow.model.quantity.Kind;
import freshfurrow.model.quantity.WrittenQuantity;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/** The JSON Schema of the season file: what forms are made of. */
final class SeasonSchema {
    private static final String DEFINITIONS = "#/$defs/";

    private final JsonNode whole;

    private SeasonSchema(JsonNode whole) {
        this.whole = whole;
    }

    static SeasonSchema read() {
        try (InputStream in = SeasonSchema.class.getResourceAsStream("/freshfurrow/desk/season.schema.json")) {
            if (in == null) {
                throw new IllegalStateException("the program was built without the schema of the season file");
            }
            return new SeasonSchema(new ObjectMapper().readTree(in));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    JsonNode whole() {
        return whole;
    }

    /** What kind of quantity stands at a path of keys; empty when it is no quantity. */
    Optional<Kind> kindAt(List<String> path) {
        return at(path).flatMap(Part::kind);
    }

    /** The unit in which a time at a path is usually told, where the schema has a default for it: hours from one breakdown to the next. */
    Optional<String> usualTimeUnitAt(List<String> path) {
        return at(path).filter(part -> part.kind().equals(Optional.of(Kind.TIME)))
                .flatMap(part -> WrittenQuantity.parse(part.usual()))
                .map(WrittenQuantity::unit)
                .filter(Kind.TIME::has);
    }

    /** What the schema says of a place: the definition that it refers to, and its default; empty texts where there is none. */
    private record Part(String definition, String usual) {
        Optional<Kind> kind() {
            String wanted = definition.replaceAll("([A-Z])", "_$1");
            return Arrays.stream(Kind.values())
                    .filter(kind -> kind.name().equalsIgnoreCase(wanted))
                    .findFirst();
        }
    }

    private Optional<Part> at(List<String> path) {
        JsonNode part = whole;
        String name = "";
        String usual = "";
        for (String key : path) {
            Optional<JsonNode> next = choices(part)
                    .map(choice -> under(choice, key))
                    .flatMap(Optional::stream)
                    .findFirst();
            if (next.isEmpty()) {
                return Optional.empty();
            }
            part = next.get();
            name = "";
            usual = part.path("default").asText();
            while (part.has("$ref")) {
                name = part.get("$ref").asText().replace(DEFINITIONS, "");
                part = whole.path("$defs").path(name);
            }
        }
        return Optional.of(new Part(name, usual));
    }

    private static Stream<JsonNode> choices(JsonNode part) {
        return Stream.concat(
                Stream.of(part), StreamSupport.stream(part.path("oneOf").spliterator(), false));
    }

    private static Optional<JsonNode> under(JsonNode part, String key) {
        return Stream.of(part.path("properties").path(key), part.path("additionalProperties"), part.path("items"))
                .filter(JsonNode::isObject)
                .findFirst();
    }
}

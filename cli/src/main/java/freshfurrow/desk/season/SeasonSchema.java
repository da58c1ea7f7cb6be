package freshfurrow.desk.season;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import freshfurrow.model.quantity.Kind;
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
        JsonNode part = whole;
        String name = "";
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
            while (part.has("$ref")) {
                name = part.get("$ref").asText().replace(DEFINITIONS, "");
                part = whole.path("$defs").path(name);
            }
        }
        String wanted = name.replaceAll("([A-Z])", "_$1");
        return Arrays.stream(Kind.values())
                .filter(kind -> kind.name().equalsIgnoreCase(wanted))
                .findFirst();
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

package freshfurrow.desk.server;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.StreamSupport;

/** JSON as the desk's pages and the desk send it to one another. */
public final class Json {
    private static final int DEEPEST = 50;
    private static final ObjectMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(DEEPEST)
                            .build())
                    .build())
            .build();

    private Json() {}

    public static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    public static ArrayNode list(List<String> texts) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        texts.forEach(list::add);
        return list;
    }

    /** @throws Unanswered when it is not JSON, or no object */
    static ObjectNode read(String text) {
        try {
            if (MAPPER.readTree(text) instanceof ObjectNode object) {
                return object;
            }
        } catch (JsonProcessingException e) {
            throw Unanswered.senseless("What was sent is not JSON.");
        }
        throw Unanswered.senseless("What was sent is not a JSON object.");
    }

    /**
     * A text of an object, if it is there.
     *
     * @throws Unanswered when it is there and is no text
     */
    public static Optional<String> text(JsonNode object, String key) {
        JsonNode value = object.path(key);
        if (value.isMissingNode() || value.isNull()) {
            return Optional.empty();
        }
        if (!value.isTextual()) {
            throw Unanswered.senseless("'" + key + "' is not a text.");
        }
        return Optional.of(value.textValue());
    }

    /**
     * A text of an object.
     *
     * @throws Unanswered when it is not there, or is no text
     */
    public static String needed(JsonNode object, String key) {
        return text(object, key).orElseThrow(() -> Unanswered.senseless("'" + key + "' is missing."));
    }

    /**
     * A list of texts of an object; empty when it is not there.
     *
     * @throws Unanswered when one of it is no text
     */
    public static List<String> texts(JsonNode object, String key) {
        return StreamSupport.stream(object.path(key).spliterator(), false)
                .map(each -> {
                    if (!each.isTextual()) {
                        throw Unanswered.senseless("'" + key + "' holds something that is not a text.");
                    }
                    return each.textValue();
                })
                .toList();
    }

    /**
     * A date as pages send it.
     *
     * @throws Unanswered when it is not one
     */
    public static LocalDate date(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException e) {
            throw Unanswered.senseless("'" + text + "' is not a date like 2027-05-03.");
        }
    }

    /**
     * A local date and time.
     *
     * @throws Unanswered when it is none
     */
    public static LocalDateTime time(String text) {
        try {
            return LocalDateTime.parse(text);
        } catch (DateTimeException e) {
            throw Unanswered.senseless("'" + text + "' is not a date and time like 2027-05-03T15:10.");
        }
    }
}

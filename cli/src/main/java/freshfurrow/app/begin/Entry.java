package freshfurrow.app.begin;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Answers about one thing.
 *
 * @param id of the thing; empty for the usual one
 * @param typed answers as they were typed, by key; blank ones count as none
 */
public record Entry(String id, Map<String, String> typed) {
    public Entry {
        typed = Collections.unmodifiableMap(new LinkedHashMap<>(typed));
    }

    Optional<String> answer(Question question) {
        return Optional.ofNullable(typed.get(question.key())).map(String::strip).filter(text -> !text.isEmpty());
    }
}

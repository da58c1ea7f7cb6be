package freshfurrow.desk.planning;

import com.fasterxml.jackson.databind.JsonNode;
import freshfurrow.desk.server.Json;
import freshfurrow.desk.server.Unanswered;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Optional;

/**
 * What is to be searched for, and for how long.
 *
 * @param again whether what is left of the season is planned from the plan that is followed; else the whole season
 * @param from when on to replan; without it, now
 */
record SearchOrder(Duration time, boolean again, Optional<LocalDateTime> from) {
    private static final int MOST_SECONDS = 24 * 3600;

    static SearchOrder of(JsonNode order) {
        int seconds = order.path("seconds").asInt(0);
        if (seconds < 1 || seconds > MOST_SECONDS) {
            throw Unanswered.senseless("A search takes 1 second to 24 hours.");
        }
        return new SearchOrder(
                Duration.ofSeconds(seconds),
                order.path("again").asBoolean(false),
                Json.text(order, "from").map(SearchOrder::moment));
    }

    private static LocalDateTime moment(String text) {
        try {
            return LocalDateTime.parse(text);
        } catch (DateTimeException e) {
            throw Unanswered.senseless("'" + text + "' is not a time like 2027-05-03T14:00.");
        }
    }
}

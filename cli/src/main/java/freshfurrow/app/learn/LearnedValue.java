package freshfurrow.app.learn;

import java.util.List;

/**
 * A value for the season file.
 *
 * @param path of its keys, from the top
 * @param text as the file has it
 */
public record LearnedValue(List<String> path, String text) {
    public LearnedValue {
        path = List.copyOf(path);
    }
}

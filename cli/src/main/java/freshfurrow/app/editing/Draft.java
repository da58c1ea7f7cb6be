package freshfurrow.app.editing;

import freshfurrow.model.read.Problem;
import freshfurrow.model.read.Reading;
import java.util.List;
import java.util.Map;

/**
 * A season as it is written now, be it right or half done.
 *
 * @param digests SHA-256 of each file that it was read from, by the name that problems give it, the season file first
 * @param tree what is written, by key: maps, lists and texts; empty when the season file cannot be read. Fields that have a file of
 *     their own are under {@code fields} by id
 * @param fieldLines in which line of their own file fields stand, by id, as problems of a table name lines rather than fields
 * @param reading the season, or all that is wrong with it or missing
 */
public record Draft(
        Map<String, String> digests, Map<String, Object> tree, Map<String, Integer> fieldLines, Reading reading) {
    /** None when the season is right. */
    public List<Problem> problems() {
        return reading instanceof Reading.Invalid invalid ? invalid.problems() : List.of();
    }
}

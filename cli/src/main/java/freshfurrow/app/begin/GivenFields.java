package freshfurrow.app.begin;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;

/**
 * The fields that were given.
 *
 * @param shapes a geometry for each row, where fields were drawn on a map
 */
public record GivenFields(List<FieldRow> rows, Optional<List<JsonNode>> shapes) {
    public static final GivenFields NONE = new GivenFields(List.of(), Optional.empty());

    public GivenFields {
        rows = List.copyOf(rows);
        shapes = shapes.map(List::copyOf);
        if (shapes.isPresent() && shapes.get().size() != rows.size()) {
            throw new IllegalArgumentException("each drawn field has a row");
        }
    }

    /** Fields of a table. */
    public static GivenFields table(List<FieldRow> rows) {
        return new GivenFields(rows.stream().filter(row -> !row.isBlank()).toList(), Optional.empty());
    }
}

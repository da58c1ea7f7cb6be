package freshfurrow.model.season;

import java.util.Comparator;
import java.util.List;

/**
 * All that decides when a field is too wet.
 *
 * @param judged what people said of it, by time
 */
public record FieldGround(Drainage drainage, List<Judgement> judged) {
    public FieldGround {
        judged = judged.stream().sorted(Comparator.comparing(Judgement::said)).toList();
    }

    /** Ground of a drainage class that nobody judged. */
    public static FieldGround of(Drainage drainage) {
        return new FieldGround(drainage, List.of());
    }
}

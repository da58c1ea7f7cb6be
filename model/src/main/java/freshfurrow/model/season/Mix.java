package freshfurrow.model.season;

import java.time.LocalDateTime;
import java.util.List;

/**
 * Mix that is in a tank.
 *
 * @param recipe id of a recipe
 * @param areaHa what it serves at its recipe's rates, ha, above 0; batches that are not thinned yet count as what they will be
 * @param deadline end of its oldest batch's hold time
 * @param batches names of the batches that it was made of, the oldest first; empty when they are not known
 */
public record Mix(String recipe, double areaHa, LocalDateTime deadline, List<String> batches) {
    public Mix {
        batches = List.copyOf(batches);
        if (!(areaHa > 0)) {
            throw new IllegalArgumentException("mix for " + areaHa + " ha, expected above 0");
        }
    }

    /** This mix for another area. */
    public Mix withAreaHa(double other) {
        return new Mix(recipe, other, deadline, batches);
    }

    /** This mix with another deadline. */
    public Mix withDeadline(LocalDateTime other) {
        return new Mix(recipe, areaHa, other, batches);
    }
}

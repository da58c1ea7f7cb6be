package freshfurrow.cli.card;

import freshfurrow.model.mixing.LabCount;
import java.time.LocalTime;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a mixing card is to be made for.
 *
 * @param planter index in the season's order; likewise {@code rig} and {@code recipe}
 * @param areaHa above 0, ha
 * @param areaFrom where the area comes from, in a few words
 * @param bucketKg compost in a full bucket, above 0, kg, where it was weighed
 * @param start when the first batch begins
 */
public record MixingOrder(
        int planter,
        int rig,
        int recipe,
        double areaHa,
        String areaFrom,
        OptionalDouble bucketKg,
        Optional<LocalTime> start,
        Optional<LabCount> count) {}

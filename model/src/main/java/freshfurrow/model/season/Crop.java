package freshfurrow.model.season;

import java.util.Optional;

/**
 * What fields of a crop have in common; a field may have its own instead.
 *
 * @param window dates to plant it in, where the crop has one
 * @param recipe id of a recipe, where the crop has one
 * @param lateWeight what a late day counts against others, 0 or more
 * @param extractWeight what planting without extract counts against others, 0 or more
 * @param work what is done to its fields
 */
public record Crop(
        String id,
        Optional<DateWindow> window,
        Optional<String> recipe,
        double lateWeight,
        double extractWeight,
        Work work) {}

package freshfurrow.model.roads;

import java.util.OptionalDouble;

/**
 * What has to fit on a road and its bridges: the widest and the heaviest machine as they drive. Where nothing is said, no sign of a
 * limit closes a road.
 *
 * @param widthM folded, m, more than 0
 * @param weightKg loaded, kg, more than 0
 */
public record MachineSize(OptionalDouble widthM, OptionalDouble weightKg) {}

package freshfurrow.model.quantity;

/**
 * The units in which a season's people want their figures, as found in their season file.
 *
 * @param area for fields
 * @param volume for water and mix
 * @param mass for compost
 * @param distance for roads
 * @param clock for times of day
 */
public record DisplayUnits(AreaUnit area, VolumeUnit volume, MassUnit mass, DistanceUnit distance, ClockFace clock) {
    public static final DisplayUnits US =
            new DisplayUnits(AreaUnit.ACRE, VolumeUnit.GALLON, MassUnit.POUND, DistanceUnit.MILE);
    public static final DisplayUnits METRIC =
            new DisplayUnits(AreaUnit.HECTARE, VolumeUnit.LITRE, MassUnit.KILOGRAM, DistanceUnit.KILOMETRE);

    /** With the clock that is usual with the unit of area. */
    public DisplayUnits(AreaUnit area, VolumeUnit volume, MassUnit mass, DistanceUnit distance) {
        this(area, volume, mass, distance, ClockFace.usualWith(area));
    }

    /** These units with that clock. */
    public DisplayUnits withClock(ClockFace other) {
        return new DisplayUnits(area, volume, mass, distance, other);
    }

    /** Whether the clock is the usual one, which needs no telling. */
    public boolean hasUsualClock() {
        return clock == ClockFace.usualWith(area);
    }
}

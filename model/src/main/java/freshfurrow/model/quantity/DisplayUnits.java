package freshfurrow.model.quantity;

/**
 * The units in which a season's people want their figures, as found in their season file.
 *
 * @param area for fields
 * @param volume for water and mix
 * @param mass for compost
 * @param distance for roads
 */
public record DisplayUnits(AreaUnit area, VolumeUnit volume, MassUnit mass, DistanceUnit distance) {
    public static final DisplayUnits US =
            new DisplayUnits(AreaUnit.ACRE, VolumeUnit.GALLON, MassUnit.POUND, DistanceUnit.MILE);
    public static final DisplayUnits METRIC =
            new DisplayUnits(AreaUnit.HECTARE, VolumeUnit.LITRE, MassUnit.KILOGRAM, DistanceUnit.KILOMETRE);
}

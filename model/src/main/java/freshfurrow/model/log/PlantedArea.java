package freshfurrow.model.log;

import freshfurrow.model.quantity.AreaUnit;
import freshfurrow.model.season.Field;

/**
 * How much of a field is planted. People log areas as their sheets show them, so that what is within the rounding of the sheets
 * counts as the whole field.
 *
 * @param fieldHa area of the field, ha, above 0
 * @param plantedHa sum of what was logged, ha, 0 or more
 * @param roundingHa by how much the sum may be off through rounding, ha, 0 or more
 */
public record PlantedArea(double fieldHa, double plantedHa, double roundingHa) {
    /** Rounding of units. */
    private static final double TINY_HA = 1e-9;

    /** Nothing of a field. */
    public static PlantedArea none(Field field) {
        return new PlantedArea(field.areaHa(), 0, TINY_HA);
    }

    /** This and a further piece that was logged in figures of the unit. */
    public PlantedArea plus(double ha, AreaUnit unit) {
        return new PlantedArea(fieldHa, plantedHa + ha, roundingHa + halfOfLastDecimalHa(unit));
    }

    /** Whether nothing is left to plant. */
    public boolean isWhole() {
        return plantedHa >= fieldHa - roundingHa;
    }

    /** Whether more was logged than the field has. */
    public boolean isTooMuch() {
        return plantedHa > fieldHa + roundingHa;
    }

    /** What is left to plant, ha, 0 or more. */
    public double leftHa() {
        return isWhole() ? 0 : fieldHa - plantedHa;
    }

    private static double halfOfLastDecimalHa(AreaUnit unit) {
        return 0.5 * Math.pow(10, -unit.decimals()) / unit.fromHectares(1);
    }
}

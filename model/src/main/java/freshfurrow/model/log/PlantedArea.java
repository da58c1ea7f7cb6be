package freshfurrow.model.log;

import freshfurrow.model.quantity.AreaUnit;
import freshfurrow.model.season.Field;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;

/**
 * How much of a field is planted. People log areas as their sheets show them, so that what is within the rounding of the sheets
 * counts as the whole field. Figures with more decimals than sheets have are off by no more than half of their own last one.
 *
 * @param fieldHa area of the field, ha, above 0
 * @param plantedHa sum of what was logged, ha, 0 or more
 * @param roundingHa by how much the sum may be off through rounding, ha, 0 or more; what sheets would show as nothing, once there is a sum
 */
public record PlantedArea(double fieldHa, double plantedHa, double roundingHa) {
    /** Rounding of units. */
    private static final double TINY_HA = 1e-9;

    /** Further ones are rounding of units. */
    private static final int MOST_DECIMALS = 6;

    /** Nothing of a field. */
    public static PlantedArea none(Field field) {
        return new PlantedArea(field.areaHa(), 0, TINY_HA);
    }

    /** This and a further piece that was logged in figures of the unit. */
    public PlantedArea plus(double ha, AreaUnit unit) {
        double ofSheetsHa = halfOfLastDecimalHa(unit, unit.decimals());
        double ofFigureHa = Math.min(ofSheetsHa, asWrittenHa(ha));
        return new PlantedArea(fieldHa, plantedHa + ha, Math.max(ofSheetsHa, roundingHa + ofFigureHa));
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

    /** A figure has the fewest decimals in the unit in which it was written. */
    private static double asWrittenHa(double ha) {
        return Arrays.stream(AreaUnit.values())
                .mapToDouble(unit -> halfOfLastDecimalHa(unit, decimals(unit.fromHectares(ha))))
                .max()
                .orElseThrow();
    }

    private static int decimals(double figure) {
        return BigDecimal.valueOf(figure)
                .setScale(MOST_DECIMALS, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .scale();
    }

    private static double halfOfLastDecimalHa(AreaUnit unit, int decimals) {
        return 0.5 * Math.pow(10, -decimals) / unit.fromHectares(1);
    }
}

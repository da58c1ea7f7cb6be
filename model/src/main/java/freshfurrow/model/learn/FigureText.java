package freshfurrow.model.learn;

import freshfurrow.model.quantity.AreaUnit;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.quantity.DistanceUnit;
import freshfurrow.model.quantity.Kind;
import freshfurrow.model.quantity.VolumeUnit;
import java.math.BigDecimal;
import java.math.MathContext;

/**
 * Figures of {@link Taught} as a season file may have them, to three digits: no log tells more.
 *
 * @param units those of the season
 */
public record FigureText(DisplayUnits units) {
    private static final MathContext DIGITS = new MathContext(3);
    private static final double SHORT_S = 120;

    /** A number and its unit, as {@code 19.4 min}. */
    public String of(Taught figure, double si) {
        return (number(figure, si) + " " + unit(figure, si)).strip();
    }

    /** As {@code 18.6 to 20.3 min}; an end that is not known is said to be so. */
    public String interval(Taught figure, double low, double high) {
        return Double.isInfinite(high)
                ? number(figure, low) + " " + unit(figure, low) + " or more"
                : number(figure, low, high) + " to " + of(figure, high);
    }

    /** A plain number to three digits. */
    public static String number(double figure) {
        return new BigDecimal(figure).round(DIGITS).stripTrailingZeros().toPlainString();
    }

    private String number(Taught figure, double si) {
        return number(figure, si, si);
    }

    /** @param like what is in the same unit */
    private String number(Taught figure, double si, double like) {
        return number(figure == Taught.SPREAD ? si : si / kind(figure).toSi(1, unit(figure, like)));
    }

    private static Kind kind(Taught figure) {
        return switch (figure) {
            case BATCH_TIME -> Kind.TIME;
            case TRANSFER_RATE -> Kind.FLOW;
            case FIELD_CAPACITY -> Kind.AREA_PER_TIME;
            case ROAD_SPEED -> Kind.SPEED;
            case DRYING -> Kind.DRYING;
            case SPREAD -> throw new IllegalArgumentException("a spread has no unit");
        };
    }

    private String unit(Taught figure, double si) {
        return switch (figure) {
            case BATCH_TIME -> si < SHORT_S ? "s" : "min";
            case TRANSFER_RATE -> units.volume() == VolumeUnit.GALLON ? "gal/min" : "L/min";
            case FIELD_CAPACITY -> units.area() == AreaUnit.ACRE ? "ac/h" : "ha/h";
            case ROAD_SPEED -> units.distance() == DistanceUnit.MILE ? "mph" : "km/h";
            case DRYING -> units.area() == AreaUnit.ACRE ? "d/in" : "d/mm";
            case SPREAD -> "";
        };
    }
}

package freshfurrow.cli.card;

import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.quantity.DistanceUnit;
import freshfurrow.model.quantity.Kind;
import freshfurrow.model.quantity.VolumeUnit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/** SI figures in a card's units, with so many digits that the arithmetic can be followed. */
public record CardUnits(DisplayUnits units) {
    private static final MathContext FOUR_DIGITS = new MathContext(4, RoundingMode.HALF_UP);
    private static final double WHOLE_FROM = 1000;

    /** Whether water goes by the gallon: then flows, catches, widths and pressures are in US units too. */
    boolean us() {
        return units.volume() == VolumeUnit.GALLON;
    }

    /** US units all through where water goes by the gallon, else metric ones. */
    public static CardUnits ofOneSystem(DisplayUnits units) {
        return new CardUnits(units.volume() == VolumeUnit.GALLON ? DisplayUnits.US : DisplayUnits.METRIC);
    }

    /** The unit for quantities of a kind. */
    public String symbol(Kind kind) {
        String area = units.area().symbol();
        return switch (kind) {
            case AREA -> area;
            case VOLUME -> units.volume().symbol();
            case MASS -> units.mass().symbol();
            case VOLUME_PER_AREA -> units.volume().symbol() + "/" + area;
            case MASS_PER_AREA -> units.mass().symbol() + "/" + area;
            case SPEED -> units.distance() == DistanceUnit.MILE ? "mph" : "km/h";
            case LENGTH -> us() ? "ft" : "m";
            case AREA_PER_TIME -> area + "/h";
            case FLOW -> us() ? "gal/min" : "L/min";
            case CAUGHT_VOLUME -> us() ? "floz" : "mL";
            case PRESSURE -> us() ? "psi" : "kPa";
            case TIME,
                    TEMPERATURE,
                    RAIN,
                    DRYING,
                    TIME_PER_MASS,
                    TIME_PER_AREA,
                    PRICE_PER_TIME,
                    PRICE_PER_DISTANCE,
                    PRICE_PER_MASS,
                    PRICE_PER_VOLUME,
                    PRICE_PER_AREA,
                    PRICE_PER_AREA_DAY -> throw new IllegalArgumentException("a card has no unit for " + kind);
        };
    }

    /** A figure that is kept in SI, in the card's unit. */
    double figure(Kind kind, double si) {
        return si / kind.toSi(1, symbol(kind));
    }

    /** As {@code 0.5051 gal/min}. */
    String show(Kind kind, double si) {
        return number(figure(kind, si)) + " " + symbol(kind).replace("floz", "fl oz");
    }

    /** A row spacing, as {@code 30 in} or {@code 75 cm}. */
    String spacing(double metres) {
        String symbol = us() ? "in" : "cm";
        return number(metres / Kind.LENGTH.toSi(1, symbol)) + " " + symbol;
    }

    /** Four digits that count, or all digits before the point, as {@code 0.5051} or {@code 1,200}. */
    static String number(double figure) {
        if (Math.abs(figure) >= WHOLE_FROM) {
            return String.format(Locale.ROOT, "%,.0f", figure);
        }
        BigDecimal rounded = new BigDecimal(figure).round(FOUR_DIGITS);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** A large count, as {@code 2.63e11}. */
    static String count(double count) {
        return String.format(Locale.ROOT, "%.2e", count).replace("e+0", "e").replace("e+", "e");
    }

    /** A share as a percentage with its sign, as {@code -7.2 %}. */
    static String signedPercent(double share) {
        double percent = Math.round(share * 1000) / 10.0;
        return String.format(Locale.ROOT, percent == 0 ? "%.1f %%" : "%+.1f %%", Math.abs(percent) == 0 ? 0 : percent);
    }
}

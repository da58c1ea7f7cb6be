package freshfurrow.model.read;

import freshfurrow.model.quantity.DisplayUnits;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** SI figures in the season's units, to hundredths, for messages. */
record LogFigures(DisplayUnits units) {
    String area(double hectares) {
        return figure(units.area().fromHectares(hectares)) + " " + units.area().symbol();
    }

    String volume(double litres) {
        return figure(units.volume().fromLitres(litres)) + " " + units.volume().symbol();
    }

    String mass(double kilograms) {
        return figure(units.mass().fromKilograms(kilograms)) + " "
                + units.mass().symbol();
    }

    private static String figure(double figure) {
        return BigDecimal.valueOf(figure)
                .setScale(2, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }
}

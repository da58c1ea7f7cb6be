package freshfurrow.cli.command;

import freshfurrow.model.quantity.Kind;
import freshfurrow.model.quantity.WrittenQuantity;
import java.util.List;
import java.util.regex.Pattern;

/** Quantities of the command line, written as in a season file. */
final class QuantityText {
    private static final Pattern FLUID_OUNCES = Pattern.compile("fl\\.? oz");
    private static final Pattern COMMA = Pattern.compile(",");

    private QuantityText() {}

    /**
     * The quantity in the kind's SI unit, above 0.
     *
     * @param option as people write it, for messages
     * @param unitIfBare unit of a figure without one
     * @throws WrongArgument when it is no such quantity
     */
    static double si(String option, String text, Kind kind, String unitIfBare) {
        double figure = figure(option, text, kind, unitIfBare);
        if (!(figure > 0)) {
            throw new WrongArgument(
                    option + " '" + text + "' must be above 0; write " + kind.noun() + " like " + kind.examples());
        }
        return figure;
    }

    /**
     * Quantities with commas between, each 0 or more and one above.
     *
     * @throws WrongArgument when they are no such quantities
     */
    static List<Double> list(String option, String text, Kind kind, String unitIfBare) {
        List<Double> figures = COMMA.splitAsStream(text)
                .map(part -> figure(option, part.strip(), kind, unitIfBare))
                .toList();
        if (figures.stream().anyMatch(figure -> figure < 0) || figures.stream().noneMatch(figure -> figure > 0)) {
            throw new WrongArgument(
                    option + " '" + text + "' must be 0 or more for each outlet, and above 0 for at least one");
        }
        return figures;
    }

    /**
     * A figure without a unit.
     *
     * @throws WrongArgument when it is none
     */
    static double number(String option, String text, String remedy) {
        return WrittenQuantity.parse(text)
                .filter(written -> written.unit().isEmpty())
                .map(WrittenQuantity::figure)
                .orElseThrow(() -> new WrongArgument(option + " '" + text + "' is not a number; " + remedy));
    }

    private static double figure(String option, String text, Kind kind, String unitIfBare) {
        String remedy = "write " + kind.noun() + " like " + kind.examples();
        WrittenQuantity written = WrittenQuantity.parse(
                        FLUID_OUNCES.matcher(text).replaceAll("floz"))
                .orElseThrow(() -> new WrongArgument(option + " '" + text + "' is not a quantity; " + remedy));
        String unit = written.unit().isEmpty() ? unitIfBare : written.unit();
        if (!kind.has(unit)) {
            throw new WrongArgument(option + " '" + text + "': " + unit + " is not a unit of " + kind.noun()
                    + "; use one of " + String.join(", ", kind.symbols()) + ", like " + kind.examples());
        }
        return kind.toSi(written.figure(), unit);
    }
}

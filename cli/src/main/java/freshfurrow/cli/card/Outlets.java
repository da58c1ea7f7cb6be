package freshfurrow.cli.card;

import freshfurrow.model.season.Planter;
import freshfurrow.model.season.Sprayer;
import freshfurrow.model.season.Swath;

/**
 * The outlets of a machine, side by side.
 *
 * @param machine what it is and its id, as {@code planter P1}
 * @param widthM working width, m, above 0
 * @param spacingM between outlets, m, above 0 and at most the width
 * @param one what people call an outlet; its plural takes an s
 * @param isBoom whether it sprays
 */
public record Outlets(String machine, double widthM, double spacingM, String one, boolean isBoom) {
    /** Those of a planter, a row each. */
    public static Outlets of(Planter planter) {
        return new Outlets("planter " + planter.id(), planter.widthM(), planter.rowSpacingM(), "row", false);
    }

    /** Those of a sprayer's boom. */
    public static Outlets of(Sprayer sprayer, Swath.Boom boom, double spacingM) {
        return new Outlets("sprayer " + sprayer.id(), boom.widthM(), spacingM, "nozzle", true);
    }

    /** How many there are; not always a whole number, as ends of the width may have none. */
    public double count() {
        return widthM / spacingM;
    }

    String many() {
        return one + "s";
    }
}

package freshfurrow.cli.text;

import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.WetDay;

/** Wet ground in words. */
public final class GroundText {
    private GroundText() {}

    /** A drainage class, as {@code poorly drained}. */
    public static String name(Drainage drainage) {
        return switch (drainage) {
            case WELL -> "well drained";
            case MODERATE -> "moderately drained";
            case POOR -> "poorly drained";
        };
    }

    /** Why no field of a drainage class is planted on a day. */
    public static String why(WetDay day, Drainage drainage, Figures figures) {
        String fields = name(drainage) + " fields closed: ";
        return day.tooWet()
                ? fields + figures.rain(day.topsoilMm()) + " of water in the topsoil (limit for a planter "
                        + figures.rain(day.limitMm()) + ")"
                : fields + "rained off by " + figures.rain(day.rainMm());
    }
}

package freshfurrow.cli.text;

import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.Judgement;
import freshfurrow.model.season.Season;
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

    /** What somebody said of a field's ground, as {@code found unfit on Mon 2027-05-03 7:00 am, until Thu 2027-05-06 12:00 am}. */
    public static String said(Judgement judgement, Season season, Figures figures) {
        String on = " on " + figures.moment(judgement.said());
        if (judgement.isFit()) {
            return "found fit" + on;
        }
        return "found unfit" + on
                + (judgement.fitFrom().isBefore(season.end())
                        ? ", until " + figures.moment(judgement.fitFrom())
                        : ", until further notice");
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

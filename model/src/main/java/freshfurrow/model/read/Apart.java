package freshfurrow.model.read;

import java.util.Locale;

/** Two figures of one unit as text, with as many more decimals as it takes to tell them apart. */
record Apart(String one, String other) {
    private static final int MOST_DECIMALS = 6;

    /**
     * @param decimals so many where they tell the figures apart
     * @param unit as it stands behind both
     */
    static Apart of(double one, double other, int decimals, String unit) {
        Apart apart = new Apart(text(one, decimals, unit), text(other, decimals, unit));
        return apart.one.equals(apart.other) && decimals < MOST_DECIMALS ? of(one, other, decimals + 1, unit) : apart;
    }

    private static String text(double figure, int decimals, String unit) {
        return String.format(Locale.ROOT, "%." + decimals + "f %s", figure, unit);
    }
}

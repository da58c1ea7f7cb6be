package freshfurrow.cli.words;

import freshfurrow.app.springs.SpringCount;

/** Which springs something was counted in. */
public final class SpringsText {
    private SpringsText() {}

    /** As {@code 100 springs (30 recorded, 70 generated) from station.csv}. */
    public static String of(SpringCount springs) {
        return springs.all() + " springs (" + springs.recorded() + " recorded, " + springs.generated()
                + " generated) from " + springs.record();
    }
}

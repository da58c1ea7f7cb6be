package freshfurrow.model.plan;

import java.util.Locale;

/** Why a planter cannot go on. */
public enum WaitReason {
    RIG,
    WET,
    WINDOW,
    HOURS,
    COMPOST,
    WATER,
    /** A sprayer waits for the hours in which it may spray. */
    SPRAY_HOURS;

    /** Its name in a plan file. */
    public String key() {
        return this == SPRAY_HOURS ? "sprayHours" : name().toLowerCase(Locale.ROOT);
    }
}

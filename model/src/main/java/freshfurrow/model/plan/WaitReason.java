package freshfurrow.model.plan;

import java.util.Locale;

/** Why a planter cannot go on. */
public enum WaitReason {
    RIG,
    WET,
    WINDOW,
    HOURS,
    COMPOST,
    WATER;

    /** Its name in a plan file. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}

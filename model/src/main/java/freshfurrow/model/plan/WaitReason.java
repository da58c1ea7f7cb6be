package freshfurrow.model.plan;

/** Why a planter cannot go on. */
public enum WaitReason {
    RIG,
    WET,
    WINDOW,
    HOURS,
    COMPOST,
    WATER
}

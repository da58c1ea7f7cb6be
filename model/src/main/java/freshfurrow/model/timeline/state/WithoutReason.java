package freshfurrow.model.timeline.state;

/** Why a planter plants without extract. */
public enum WithoutReason {
    /** The field is to be planted so. */
    DECIDED,
    /** No compost is left, or none until a later lot is on hand. */
    COMPOST,
    /** No rig can bring a load, or no water point the water for it, before the season ends. */
    NO_LOAD,
    /** It would wait for its rig longer than it waits. */
    LONG_WAIT,
    /** No load that is worth a fill is to be had in this planting period. */
    SMALL_LOAD
}

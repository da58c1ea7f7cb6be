package freshfurrow.model.timeline.state;

/** Why a field is not planted in whole. */
public enum Shortfall {
    /** No compost is left and none will come. */
    COMPOST,
    /** No working time is left in which its field, window and planter allow planting. */
    SEASON_ENDS,
    /** No rig can bring a load, or no water point the water for it, before the season ends. */
    NO_LOAD,
    /** Nothing of a load would be in the ground before its hold time is over. */
    HOLD_TIME,
    /** The planter whose list it stands in may not plant it. */
    NOT_ALLOWED,
    /** It stands in no planter's list. */
    LEFT_OUT
}

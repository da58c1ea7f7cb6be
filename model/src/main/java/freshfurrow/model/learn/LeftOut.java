package freshfurrow.model.learn;

/** Why an entry of a log teaches nothing. */
public enum LeftOut {
    /** It is void. */
    VOID,
    /** Nobody said how long it took, as in all lines that were taken from a plan. */
    NO_TIME,
    /** Nobody said which machine it was. */
    NO_MACHINE,
    /** The rig's least batch time counted. */
    SMALL_BATCH,
    /** Nobody knows how long the road is, or it has no length. */
    NO_ROAD,
    /** It goes on while another entry of its machine does. */
    OVERLAP,
    /** Another transfer has the same load. */
    TWO_TRANSFERS,
    /** It begins before the load that it needs was there, or is what that load was waiting for. */
    OUT_OF_ORDER,
    /** Somebody said something of ground before which no rain is known. */
    NO_RAIN,
    /** Ground was said to be unfit after it was fit, and no rain fell in between. */
    UNFIT_AFTER_FIT
}

package freshfurrow.model.season;

/** Where a rig makes its batches. */
public enum ExtractAt {
    /** Beside the planter, as late as possible. */
    FIELD,
    /** At the water point, before driving out. */
    WATER
}

package freshfurrow.app.output;

/** What became of the page of a plan. */
public enum PageOutcome {
    WRITTEN,
    NOT_WANTED,
    /** Planning was told to stop, and making the page would have taken longer than anyone waits then. */
    STOPPED
}

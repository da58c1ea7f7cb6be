package freshfurrow.app.time;

/** What the time of planning goes into. */
public enum Stage {
    READING,
    SEARCH,
    BOUNDS,
    /** What holds the season back. */
    LIMITS,
    /** How sure the plan is. */
    CHANCES,
    AUDIT,
    /** What a plan changes of the one before. */
    CHANGES,
    PAGE,
    WRITING
}

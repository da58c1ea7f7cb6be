package freshfurrow.app.planning;

/**
 * How planning ended.
 *
 * @param stopped whether it was told to stop, so that the plan is the best that was found until then
 * @param withBounds whether there was time to work out what no plan can do better
 * @param withLimits whether there was time to work out what holds the season back
 */
public record PlanningEnd(boolean stopped, boolean withBounds, boolean withLimits) {
    /** All that was to be done is done. */
    static final PlanningEnd WHOLE = new PlanningEnd(false, true, true);
}

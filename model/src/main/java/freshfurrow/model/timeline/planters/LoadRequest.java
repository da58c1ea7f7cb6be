package freshfurrow.model.timeline.planters;

import freshfurrow.model.timeline.calendar.Calendars;

/**
 * A planter asks for a fill where it stands. There is one for each timeline: who serves requests writes it, all others read it, so
 * that no request is made anew while seasons are played.
 */
public final class LoadRequest {
    private int planter;
    private int place;
    private int recipe;
    private int needS;

    public void ask(int planterIndex, int placeIndex, int recipeIndex, int s) {
        planter = planterIndex;
        place = placeIndex;
        recipe = recipeIndex;
        needS = s;
    }

    public int planter() {
        return planter;
    }

    /** Where the planter stands. */
    public int place() {
        return place;
    }

    public int recipe() {
        return recipe;
    }

    /** When it asks, s. */
    public int needS() {
        return needS;
    }

    /** The midnight after it asks, s. */
    public int tomorrowS() {
        return (needS / Calendars.DAY_S + 1) * Calendars.DAY_S;
    }
}

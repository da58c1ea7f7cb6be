package freshfurrow.model.timeline;

/**
 * A planter asks for a fill where it stands. There is one for each timeline: who serves requests writes it, all others read it, so
 * that no request is made anew while seasons are played.
 */
final class LoadRequest {
    private int planter;
    private int place;
    private int recipe;
    private int needS;

    void ask(int planterIndex, int placeIndex, int recipeIndex, int s) {
        planter = planterIndex;
        place = placeIndex;
        recipe = recipeIndex;
        needS = s;
    }

    int planter() {
        return planter;
    }

    /** Where the planter stands. */
    int place() {
        return place;
    }

    int recipe() {
        return recipe;
    }

    /** When it asks, s. */
    int needS() {
        return needS;
    }

    /** The midnight after it asks, s. */
    int tomorrowS() {
        return (needS / Calendars.DAY_S + 1) * Calendars.DAY_S;
    }
}

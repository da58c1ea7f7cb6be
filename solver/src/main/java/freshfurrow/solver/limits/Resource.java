package freshfurrow.solver.limits;

/** What can be made free. Working hours, closed days, tanks and hold times are none of these: they stay as they are. */
enum Resource {
    /** Planting, moves and setting up for a fill take next to no time. */
    PLANTER("planter"),
    /** Batches, cleans, pumping and drives take next to no time. Drawing water still takes its time. */
    RIG("rig"),
    /** There is a hose for every rig, and water comes at once, without treatment. */
    HOSE("hose"),
    /** No water point has a daily limit. */
    WATER_LIMIT("waterLimit"),
    /** There is more than enough compost from the first day on. */
    COMPOST("compost"),
    /** It never rains. */
    WEATHER("weather"),
    /** Fields may be planted from the season's first day on. Their last days stay: what comes after them is late. */
    WINDOWS("windows");

    private final String key;

    Resource(String key) {
        this.key = key;
    }

    /** Its name in the plan file. */
    String key() {
        return key;
    }
}

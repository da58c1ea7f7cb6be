package freshfurrow.model.plan;

/** What a season can be short of. */
public enum Resource {
    PLANTER("planter"),
    RIG("rig"),
    HOSE("hose"),
    WATER_LIMIT("waterLimit"),
    COMPOST("compost"),
    WEATHER("weather"),
    WINDOWS("windows");

    private final String key;

    Resource(String key) {
        this.key = key;
    }

    /** Its name in a plan file. */
    public String key() {
        return key;
    }
}

package freshfurrow.model.season;

/** What a season costs money for, in the order in which it is added up. */
public enum CostItem {
    /** Hours at work of all machines: each day from a machine's first deed to its last, breaks left out, h. */
    WORK("work", "h"),
    /** What machines drive, km. */
    ROAD("road", "km"),
    /** Compost that goes into batches, kg. */
    COMPOST("compost", "kg"),
    /** Area planted after its window times the days after, ha-days. */
    LATE("late", "ha-days"),
    /** Area not planted, ha. */
    UNPLANTED("unplanted", "ha"),
    /** Area planted without extract, ha. */
    UNTREATED("untreated", "ha"),
    /** Water drawn by rigs, L. */
    WATER("water", "L"),
    /** Time planted past the last hours of days, which no hours at work count, h. */
    OVERTIME("overtime", "h");

    private final String key;
    private final String unit;

    CostItem(String key, String unit) {
        this.key = key;
        this.unit = unit;
    }

    /** What files call it. */
    public String key() {
        return key;
    }

    /** Of its amounts. */
    public String unit() {
        return unit;
    }
}

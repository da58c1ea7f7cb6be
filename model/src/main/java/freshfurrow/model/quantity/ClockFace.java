package freshfurrow.model.quantity;

/** How people of a season tell the time of day. */
public enum ClockFace {
    TWELVE_HOURS("12h"),
    TWENTY_FOUR_HOURS("24h");

    private final String symbol;

    ClockFace(String symbol) {
        this.symbol = symbol;
    }

    /** As written in files. */
    public String symbol() {
        return symbol;
    }

    /** What is usual where fields are measured in that unit. */
    public static ClockFace usualWith(AreaUnit area) {
        return area == AreaUnit.ACRE ? TWELVE_HOURS : TWENTY_FOUR_HOURS;
    }
}

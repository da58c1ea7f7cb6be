package freshfurrow.model.quantity;

/** Units of road distance that a season file may use. */
public enum DistanceUnit {
    KILOMETRE("km", 1),
    MILE("mi", 1.609344);

    private final String symbol;
    private final double kilometresPerUnit;

    DistanceUnit(String symbol, double kilometresPerUnit) {
        this.symbol = symbol;
        this.kilometresPerUnit = kilometresPerUnit;
    }

    /** As written after a number. */
    public String symbol() {
        return symbol;
    }

    /** A figure in kilometres, in this unit. */
    public double fromKilometres(double kilometres) {
        return kilometres / kilometresPerUnit;
    }
}

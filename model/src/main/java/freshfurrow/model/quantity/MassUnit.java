package freshfurrow.model.quantity;

/** Units of mass that a season file may use. */
public enum MassUnit {
    KILOGRAM("kg", 1),
    POUND("lb", 0.45359237);

    private final String symbol;
    private final double kilogramsPerUnit;

    MassUnit(String symbol, double kilogramsPerUnit) {
        this.symbol = symbol;
        this.kilogramsPerUnit = kilogramsPerUnit;
    }

    /** As written after a number. */
    public String symbol() {
        return symbol;
    }

    /** A figure in kilograms, in this unit. */
    public double fromKilograms(double kilograms) {
        return kilograms / kilogramsPerUnit;
    }
}

package freshfurrow.model.quantity;

/** Units of volume that a season file may use. */
public enum VolumeUnit {
    LITRE("L", 1),
    GALLON("gal", 3.785411784);

    private final String symbol;
    private final double litresPerUnit;

    VolumeUnit(String symbol, double litresPerUnit) {
        this.symbol = symbol;
        this.litresPerUnit = litresPerUnit;
    }

    /** As written after a number. */
    public String symbol() {
        return symbol;
    }

    /** A figure in litres, in this unit. */
    public double fromLitres(double litres) {
        return litres / litresPerUnit;
    }
}

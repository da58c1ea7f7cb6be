package freshfurrow.model.quantity;

/** Units of area that a season file may use. */
public enum AreaUnit {
    HECTARE("ha", 1),
    ACRE("ac", 0.40468564224);

    private final String symbol;
    private final double hectaresPerUnit;

    AreaUnit(String symbol, double hectaresPerUnit) {
        this.symbol = symbol;
        this.hectaresPerUnit = hectaresPerUnit;
    }

    /** As written after a number. */
    public String symbol() {
        return symbol;
    }

    /** A figure in hectares, in this unit. */
    public double fromHectares(double hectares) {
        return hectares / hectaresPerUnit;
    }
}

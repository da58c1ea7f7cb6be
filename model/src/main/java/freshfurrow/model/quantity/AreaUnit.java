package freshfurrow.model.quantity;

/** Units of area that a season file may use. */
public enum AreaUnit {
    HECTARE("ha", 1, 2),
    ACRE("ac", 0.40468564224, 1);

    private final String symbol;
    private final double hectaresPerUnit;
    private final int decimals;

    AreaUnit(String symbol, double hectaresPerUnit, int decimals) {
        this.symbol = symbol;
        this.hectaresPerUnit = hectaresPerUnit;
        this.decimals = decimals;
    }

    /** As written after a number. */
    public String symbol() {
        return symbol;
    }

    /** Decimals with which areas are shown. */
    public int decimals() {
        return decimals;
    }

    /** A figure in hectares, in this unit. */
    public double fromHectares(double hectares) {
        return hectares / hectaresPerUnit;
    }
}

package freshfurrow.model.timeline.tables;

import freshfurrow.model.quantity.Factors;

/** The whole numbers that a season is played out in: areas in dm2, volumes in mL, masses in mg. */
public final class Scale {
    public static final double DM2_PER_HA = Factors.DM2_PER_HA;
    public static final double ML_PER_L = Factors.ML_PER_L;
    public static final double MG_PER_KG = Factors.MG_PER_KG;

    /** A late weight of 1, so that weights are whole numbers. */
    static final int WEIGHT_ONE = 1000;

    private Scale() {}

    public static long dm2(double hectares) {
        return Math.round(hectares * DM2_PER_HA);
    }

    static long ml(double litres) {
        return Math.round(litres * ML_PER_L);
    }

    static long mg(double kilograms) {
        return Math.round(kilograms * MG_PER_KG);
    }
}

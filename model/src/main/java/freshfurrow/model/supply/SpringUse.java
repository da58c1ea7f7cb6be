package freshfurrow.model.supply;

import java.util.Arrays;

/** What one spring used, by day of the season. */
public final class SpringUse {
    private final double[] compostKg;
    private final double[][] waterL;

    /**
     * Use by day.
     *
     * @param compostKg compost of the batches begun on each day, kg
     * @param waterL water drawn on each day, by water point in the season's order, L
     */
    public SpringUse(double[] compostKg, double[][] waterL) {
        this.compostKg = compostKg.clone();
        this.waterL = Arrays.stream(waterL).map(double[]::clone).toArray(double[][]::new);
    }

    /** Compost of the batches begun on a day counted from the season's first, kg. */
    public double compostKg(int day) {
        return compostKg[day];
    }

    /** Water drawn on a day at a water point, by its place in the season's order, L. */
    public double waterL(int point, int day) {
        return waterL[point][day];
    }
}

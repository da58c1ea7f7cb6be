package freshfurrow.model.weather;

import freshfurrow.model.season.Drainage;

/**
 * The uppermost 0.15 m of a field: how much water it holds, how fast it dries and when it bears a planter. Evaporation is that of
 * FAO Irrigation and Drainage Paper 56 (1998), chapter 7: at the full rate until the readily evaporable water is gone, then in
 * proportion to what is left of the total evaporable water, down to half the wilting point. Every step keeps the order of
 * wetter and drier, so that more rain or a wetter start never leaves a drier field.
 *
 * @param wiltingPointMm water at the wilting point, mm
 * @param fieldCapacityMm water held against gravity, mm, above the wilting point
 * @param saturationMm water that fills all pores, mm, above field capacity
 * @param readilyEvaporableMm water below field capacity that evaporates at the full rate, mm, less than all that can
 * @param curveNumber NRCS curve number, above 0 to 100
 * @param drainageDays days until nine tenths of the water above field capacity have drained, above 0
 * @param workableBelow share of field capacity above which the field bears no planter, above 0
 */
public record Topsoil(
        double wiltingPointMm,
        double fieldCapacityMm,
        double saturationMm,
        double readilyEvaporableMm,
        double curveNumber,
        double drainageDays,
        double workableBelow) {
    /** The deeper of the two layers that FAO-56, chapter 7, gives for evaporation from the soil, mm. */
    private static final double DEPTH_MM = 150;

    public Topsoil {
        if (!(wiltingPointMm >= 0
                && fieldCapacityMm > wiltingPointMm
                && saturationMm > fieldCapacityMm
                && readilyEvaporableMm >= 0
                && readilyEvaporableMm < fieldCapacityMm - wiltingPointMm / 2
                && curveNumber > 0
                && curveNumber <= 100
                && drainageDays > 0
                && workableBelow > 0)) {
            throw new IllegalArgumentException("no such topsoil");
        }
    }

    /**
     * Usual figures of a class. Water contents and readily evaporable water lie in the ranges of FAO-56, table 19, for sandy loam, silt
     * loam and silty clay; curve numbers are those of straight rows with crop residue in good condition on hydrologic soil groups
     * B, C and D (NEH part 630, chapter 9). Days to drain are common practice without a source. There is no one published limit: sandy ground
     * bears machines near field capacity and clay does not, and these give an invented climate about the days suitable for fieldwork
     * that Extension reports for one like it.
     */
    public static Topsoil usual(Drainage drainage) {
        return switch (drainage) {
            case WELL -> of(0.11, 0.23, 0.45, 8, 75, 1.5, 0.95);
            case MODERATE -> of(0.15, 0.29, 0.50, 9, 82, 3, 0.90);
            case POOR -> of(0.23, 0.36, 0.48, 10, 85, 5, 0.85);
        };
    }

    private static Topsoil of(
            double wiltingPoint,
            double fieldCapacity,
            double saturation,
            double readilyEvaporableMm,
            double curveNumber,
            double drainageDays,
            double workableBelow) {
        return new Topsoil(
                wiltingPoint * DEPTH_MM,
                fieldCapacity * DEPTH_MM,
                saturation * DEPTH_MM,
                readilyEvaporableMm,
                curveNumber,
                drainageDays,
                workableBelow);
    }

    /** The most water that bears a planter, mm. */
    public double limitMm() {
        return workableBelow * fieldCapacityMm;
    }

    /** Water once a day's rain has gone in; what runs off or finds no room is lost. */
    double wetted(double waterMm, double rainMm) {
        return Math.min(saturationMm, waterMm + rainMm - CurveNumber.runoffMm(rainMm, curveNumber));
    }

    /**
     * Water at the end of a day.
     *
     * @param waterMm with the day's rain, mm
     * @param evaporationMm what a wet surface would give off that day, mm, 0 or more
     */
    double dried(double waterMm, double evaporationMm) {
        double drained = waterMm <= fieldCapacityMm
                ? waterMm
                : fieldCapacityMm + (waterMm - fieldCapacityMm) * Math.pow(0.1, 1 / drainageDays);
        double atFullRate = Math.min(evaporationMm, Math.max(0, drained - (fieldCapacityMm - readilyEvaporableMm)));
        double left = drained - atFullRate;
        double airDry = wiltingPointMm / 2;
        if (left <= airDry) {
            return left;
        }
        double decay = fieldCapacityMm - readilyEvaporableMm - airDry;
        return airDry + (left - airDry) * Math.exp(-(evaporationMm - atFullRate) / decay);
    }
}

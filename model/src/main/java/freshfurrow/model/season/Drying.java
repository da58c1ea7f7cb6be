package freshfurrow.model.season;

/**
 * The rule of thumb for drying: days that a field stays closed per depth of rain, by drainage class.
 *
 * @param ignoreBelowMm rain under this depth (mm) closes nothing, 0 or more
 * @param wellDaysPerMm days per mm for well drained fields, 0 or more; likewise the others
 */
public record Drying(double ignoreBelowMm, double wellDaysPerMm, double moderateDaysPerMm, double poorDaysPerMm) {
    public Drying {
        if (!(ignoreBelowMm >= 0 && wellDaysPerMm >= 0 && moderateDaysPerMm >= 0 && poorDaysPerMm >= 0)) {
            throw new IllegalArgumentException("drying figures are 0 or more");
        }
    }

    /** Days per mm of rain for a drainage class. */
    public double daysPerMm(Drainage drainage) {
        return switch (drainage) {
            case WELL -> wellDaysPerMm;
            case MODERATE -> moderateDaysPerMm;
            case POOR -> poorDaysPerMm;
        };
    }
}

package freshfurrow.solver.construction;

import freshfurrow.solver.estimate.SeasonEstimate;

/**
 * The order of the windows' last days, and of fields whose windows close about the same day the nearest. Days are taken
 * together in blocks.
 */
final class ClosingSoon implements NextField {
    /** Longer than any drive, so that no drive outweighs a block of days. */
    private static final double LONG_S = 1e9;

    private final SeasonEstimate season;
    private final double slackDays;

    /** @param slackDays days after one another that count as the same, besides the first */
    ClosingSoon(SeasonEstimate season, double slackDays) {
        this.season = season;
        this.slackDays = slackDays;
    }

    @Override
    public double pressure(int planter, int from, int field, double clockS) {
        double block = Math.floor(season.closes(field) / (slackDays + 1));
        return -block * LONG_S - season.moveS(planter, from, field);
    }
}

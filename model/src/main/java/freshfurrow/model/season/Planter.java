package freshfurrow.model.season;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * A planter with an extract tank.
 *
 * @param widthM working width, m, above 0
 * @param rowSpacingM m, above 0
 * @param speedMPerS working speed, m/s, above 0
 * @param fieldEfficiency share of the theoretical capacity reached in the field, above 0 to 1; covers turns and seed
 *     refills, not extract fills, road moves or waiting
 * @param tankL extract tank, L, above 0
 * @param leastFill share of its tank, 0 to 1: a smaller fill is brought only where it finishes a field, a recipe, a mix or the compost
 * @param roadSpeedMPerS m/s, above 0
 * @param fillSetupS to stop, couple and uncouple for a fill, s, 0 or more
 * @param moveTimeS to fold, unfold and pass gates, once per change of field, s, 0 or more
 * @param overtimeS how long past the end of a day's last hours it may plant where that finishes the field or uses up the load, s, 0 or
 *     more; never past midnight
 * @param flushS to flush its lines after the last mix of a day and before mix of another recipe, s, 0 or more
 * @param longestWaitS how long it waits for a rig, s of its working time, 0 or more, before it goes on without extract where that is
 *     allowed; empty when for as long as it takes
 * @param at id of the place where it stands when the season begins
 */
public record Planter(
        String id,
        double widthM,
        double rowSpacingM,
        double speedMPerS,
        double fieldEfficiency,
        double tankL,
        double leastFill,
        double roadSpeedMPerS,
        int fillSetupS,
        int moveTimeS,
        int overtimeS,
        int flushS,
        OptionalInt longestWaitS,
        String at,
        WorkHours hours)
        implements Applicator {
    public Planter {
        if (!(widthM > 0 && rowSpacingM > 0 && speedMPerS > 0 && tankL > 0 && roadSpeedMPerS > 0)
                || !(fieldEfficiency > 0 && fieldEfficiency <= 1)
                || !(leastFill >= 0 && leastFill <= 1)
                || fillSetupS < 0
                || moveTimeS < 0
                || overtimeS < 0
                || flushS < 0
                || longestWaitS.orElse(0) < 0) {
            throw new IllegalArgumentException("planter " + id + " has a figure out of range");
        }
    }

    /**
     * Effective field capacity, m2/s: width times speed times field efficiency (ASABE EP496; the same as C [ha/h] = S
     * [km/h] x W [m] x E / 10).
     */
    @Override
    public double fieldCapacityM2PerS() {
        return widthM * speedMPerS * fieldEfficiency;
    }

    @Override
    public Work work() {
        return Work.PLANT;
    }

    @Override
    public WorkHours applyHours() {
        return WorkHours.ALWAYS;
    }

    @Override
    public Optional<String> on() {
        return Optional.empty();
    }

    @Override
    public KeptTime kept() {
        return new KeptTime(0, flushS);
    }

    @Override
    public Planter withHours(WorkHours other) {
        return change().hours(other).planter();
    }

    @Override
    public Planter withoutDelay(double mPerS) {
        return change().speedMPerS(mPerS)
                .roadSpeedMPerS(mPerS)
                .fillSetupS(0)
                .moveTimeS(0)
                .flushS(0)
                .planter();
    }

    /** A planter like this one, but for what is changed. */
    public PlanterChange change() {
        return new PlanterChange(this);
    }
}

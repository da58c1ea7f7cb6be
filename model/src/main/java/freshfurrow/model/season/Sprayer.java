package freshfurrow.model.season;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * A machine, or a person with a hose, that sprays mix out of a tank that rigs fill.
 *
 * @param swath how it covers ground; fills, road moves and waiting are not in it
 * @param tankL its tank, L, above 0
 * @param leastFill share of its tank, 0 to 1: a smaller fill is brought only where it finishes a field, a recipe, a mix or the compost
 * @param roadSpeedMPerS m/s, above 0
 * @param fillSetupS to stop, couple and uncouple for a fill, s, 0 or more
 * @param moveTimeS to fold, unfold and pass gates, once per change of field, s, 0 or more
 * @param flushS to flush its lines after the last mix of a day and before mix of another recipe, s, 0 or more
 * @param at id of the place where it stands when the season begins
 * @param sprayHours when spraying is allowed, as in hours of little wind; it drives and is filled in all of its hours
 * @param on id of the rig that it is mounted on: it is that rig, and has the tank, the speed, the place and the hours of that
 */
public record Sprayer(
        String id,
        Swath swath,
        double tankL,
        double leastFill,
        double roadSpeedMPerS,
        int fillSetupS,
        int moveTimeS,
        int flushS,
        String at,
        WorkHours hours,
        WorkHours sprayHours,
        Optional<String> on)
        implements Applicator {

    public Sprayer {
        if (!(tankL > 0 && roadSpeedMPerS > 0)
                || !(leastFill >= 0 && leastFill <= 1)
                || fillSetupS < 0
                || moveTimeS < 0
                || flushS < 0) {
            throw new IllegalArgumentException("sprayer " + id + " has a figure out of range");
        }
    }

    /** A sprayer of its own, which rigs fill. */
    public Sprayer(
            String id,
            Swath swath,
            double tankL,
            double leastFill,
            double roadSpeedMPerS,
            int fillSetupS,
            int moveTimeS,
            int flushS,
            String at,
            WorkHours hours,
            WorkHours sprayHours) {
        this(
                id,
                swath,
                tankL,
                leastFill,
                roadSpeedMPerS,
                fillSetupS,
                moveTimeS,
                flushS,
                at,
                hours,
                sprayHours,
                Optional.empty());
    }

    /** This one as it is when it is mounted on a rig. */
    Sprayer asOn(Rig rig) {
        return change().tankL(rig.nurseTankL())
                .roadSpeedMPerS(rig.roadSpeedMPerS())
                .flushS(0)
                .at(rig.at())
                .hours(rig.hours())
                .sprayer();
    }

    @Override
    public Work work() {
        return Work.SPRAY;
    }

    /** What is not sprayed is not done, so that it waits. */
    @Override
    public OptionalInt longestWaitS() {
        return OptionalInt.empty();
    }

    @Override
    public double fieldCapacityM2PerS() {
        return swath.fieldCapacityM2PerS();
    }

    /** None: what is not sprayed by the end of its hours waits. */
    @Override
    public int overtimeS() {
        return 0;
    }

    @Override
    public WorkHours applyHours() {
        return sprayHours;
    }

    @Override
    public KeptTime kept() {
        return new KeptTime(0, flushS);
    }

    @Override
    public Sprayer withHours(WorkHours other) {
        return change().hours(other).sprayer();
    }

    @Override
    public Sprayer withoutDelay(double mPerS) {
        return change().swath(swath.at(mPerS))
                .roadSpeedMPerS(mPerS)
                .fillSetupS(0)
                .moveTimeS(0)
                .flushS(0)
                .sprayer();
    }

    /** A sprayer like this one, but for what is changed. */
    public SprayerChange change() {
        return new SprayerChange(this);
    }
}

package freshfurrow.solver.bounds;

import static freshfurrow.model.quantity.Factors.DM2_PER_HA;
import static freshfurrow.model.quantity.Factors.MINUTE_S;

import freshfurrow.model.season.Goals;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.linear.ProvenBound;
import freshfurrow.solver.relaxation.Aim;
import freshfurrow.solver.relaxation.FieldGroup;
import freshfurrow.solver.relaxation.FillProgram;
import freshfurrow.solver.relaxation.Relaxation;
import java.util.List;

/**
 * Effort that no plan can go below, minutes as the score counts them.
 *
 * <p>Proof. Effort is a sum of goals times their weights, none of which is below 0. Fills, water trips, compost trips, driving and early planting are each at least what is proven of it alone, and all others are 0 or more;
 * fills and early planting together are also at least what {@link FillProgram} makes of both. What planters drive ({@link PlantersDriving}) and what rigs drive with what is mounted on them ({@link RigsDriving}) are different drives.
 * The score rounds the sum once, and of two sums the larger one is not rounded to less.
 */
final class LeastEffort {
    /** So much of a sum its rounding may make. */
    private static final double NOISE = 1e-9;

    private static final double ROUNDING_MIN = 1e-6;

    private final CompiledSeason season;
    private final List<FieldGroup> groups;
    private final FillProgram fillProgram;
    private final PlantersDriving planters;
    private final RigsDriving rigs;
    private final CompostTrips compostTrips;
    private final double earlyOfAllDm2Days;

    LeastEffort(CompiledSeason season, List<FieldGroup> groups, FillProgram fillProgram) {
        this.season = season;
        this.groups = groups;
        this.fillProgram = fillProgram;
        planters = new PlantersDriving(season);
        rigs = new RigsDriving(season);
        compostTrips = new CompostTrips(season);
        earlyOfAllDm2Days = early(0);
    }

    /**
     * What plans leave and do at the least.
     *
     * @param than what they are compared with
     * @param unplantedDm2 left unplanted at the most, of fields that some planter may plant
     * @param onBoardDm2 planted out of what was on board when the season begins to be played out, at the most
     */
    record Known(FillProgram.NoWorse than, double unplantedDm2, double onBoardDm2, int fills, int waterTrips) {
        private double withoutDm2() {
            return than.leftDm2() + onBoardDm2;
        }
    }

    /** As the score has it, negated: minutes. */
    long minutes(Known known) {
        Goals weights = season.season().goals();
        double driveS = planters.leastS(known.unplantedDm2) + rigs.leastS(known.waterTrips, known.withoutDm2());
        double sum = fillsAndEarly(weights, known)
                + weights.waterTripMin() * known.waterTrips
                + weights.compostTripMin() * compostTrips.fewest(known.withoutDm2())
                + weights.driveMinPerMin() * driveS / MINUTE_S;
        return Math.max(0, Math.round(sum * (1 - NOISE) - ROUNDING_MIN));
    }

    private double fillsAndEarly(Goals weights, Known known) {
        double perDm2Day = weights.earlyMinPerHaDay() / DM2_PER_HA;
        double early = known.unplantedDm2 == 0 || perDm2Day == 0 ? earlyOfAllDm2Days : early(known.unplantedDm2);
        double apart = weights.refillMin() * known.fills + perDm2Day * early;
        return Math.max(apart, fillProgram.least(known.than, weights.refillMin(), perDm2Day));
    }

    private double early(double unplantedDm2) {
        return Math.max(
                0,
                ProvenBound.of(Relaxation.of(season, groups, Aim.early(unplantedDm2))
                                .program())
                        .doubleValue());
    }
}

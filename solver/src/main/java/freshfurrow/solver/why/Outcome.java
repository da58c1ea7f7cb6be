package freshfurrow.solver.why;

import freshfurrow.model.goals.Counters;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.timeline.Timeline;
import java.util.Comparator;

/** What a timeline counted in one run, kept after the next one. */
public record Outcome(
        int forbiddenFields,
        int brokenPromises,
        long unservedDm2,
        long lateMilliDm2Days,
        long untreatedMilliDm2,
        int fills,
        int waterTrips,
        int compostTrips,
        long waitS,
        long idleS,
        long driveS,
        long dumpedMg,
        int movedFields,
        int scraps,
        int callOuts,
        long overtimeS,
        long earlyDm2Days,
        long lateDm2Days,
        long untreatedDm2,
        long compostMg,
        long drawnMl,
        long driveM,
        long workS,
        Plan.Score score)
        implements Counters {
    /** The better score first. */
    public static final Comparator<Outcome> BEST_FIRST = Comparator.comparing(
            Outcome::score,
            Comparator.comparingLong(Plan.Score::hard)
                    .thenComparingLong(Plan.Score::medium)
                    .thenComparingLong(Plan.Score::soft)
                    .reversed());

    static Outcome of(Timeline played) {
        return new Outcome(
                played.forbiddenFields(),
                played.brokenPromises(),
                played.unservedDm2(),
                played.lateMilliDm2Days(),
                played.untreatedMilliDm2(),
                played.fills(),
                played.waterTrips(),
                played.compostTrips(),
                played.waitS(),
                played.idleS(),
                played.driveS(),
                played.dumpedMg(),
                played.movedFields(),
                played.scraps(),
                played.callOuts(),
                played.overtimeS(),
                played.earlyDm2Days(),
                played.lateDm2Days(),
                played.untreatedDm2(),
                played.compostMg(),
                played.drawnMl(),
                played.driveM(),
                played.workS(),
                new Plan.Score(played.hard(), played.medium(), played.soft()));
    }
}

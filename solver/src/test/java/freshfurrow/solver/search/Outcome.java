package freshfurrow.solver.search;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.Timeline;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import java.util.Comparator;
import java.util.List;

/** What lists come to when played out, and how fast they were found. */
record Outcome(
        FieldLists lists,
        HardMediumSoftLongScore score,
        double lateHaDays,
        double unservedHa,
        int fills,
        int waterTrips,
        double waitH,
        double movesPerS) {
    private static final double DM2_PER_HA = 1e6;

    /** The score counts hundredths. */
    private static final double HUNDREDTHS = 100;

    static Outcome of(CompiledSeason season, FieldLists lists, double movesPerS) {
        Timeline played = new ListPlayer(season).play(lists);
        return new Outcome(
                lists,
                HardMediumSoftLongScore.of(played.hard(), played.medium(), played.soft()),
                played.lateDm2Days() / DM2_PER_HA,
                played.unservedDm2() / DM2_PER_HA,
                played.fills(),
                played.waterTrips(),
                played.waitS() / 3600.0,
                movesPerS);
    }

    /** Of an odd number of outcomes the one of the middle score. */
    static Outcome median(List<Outcome> outcomes) {
        return outcomes.stream()
                .sorted(Comparator.comparing(Outcome::score))
                .toList()
                .get(outcomes.size() / 2);
    }

    /** Late and unserved area as the score weighs them, ha-days. */
    double lateAndUnserved() {
        return -score.mediumScore() / HUNDREDTHS;
    }

    int refills() {
        return fills + waterTrips;
    }

    /** How far above the bounds, as text: of late and unserved area where there must be some, of refills elsewhere. */
    String gap(Plan.Bounds bounds) {
        double boundHaDays = -bounds.medium() / HUNDREDTHS;
        if (score.mediumScore() > bounds.medium()) {
            return "SUSPICIOUS";
        }
        return lateAndUnserved() > 0
                ? String.format("%,.1f: +%,.1f", boundHaDays, lateAndUnserved() - boundHaDays)
                : String.format(
                        "%,d: +%.0f %%",
                        bounds.planterFills() + bounds.waterTrips(),
                        100.0 * refills() / (bounds.planterFills() + bounds.waterTrips()) - 100);
    }
}

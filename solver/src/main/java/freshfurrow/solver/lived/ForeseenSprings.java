package freshfurrow.solver.lived;

import freshfurrow.model.compare.Foresight;
import freshfurrow.model.compare.SpringFigures;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.season.GroundRecord;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import java.util.List;
import java.util.stream.IntStream;

/** Springs planned with their weather known beforehand. Where the search finds nothing better than what was lived, that stands. */
final class ForeseenSprings {
    private static final Plan.SeasonSource SOURCE =
            new Plan.SeasonSource("foreseen", "", "0".repeat(64), DisplayUnits.METRIC);

    private final Season season;
    private final long steps;
    private final long seed;

    /** Plans of so many steps each. */
    ForeseenSprings(Season season, long steps, long seed) {
        this.season = season;
        this.steps = steps;
        this.seed = seed;
    }

    /** Late and unplanted area of one spring. */
    record Outcome(double lateHaDays, double unservedHa) {
        double weighed(int days) {
            return lateHaDays + unservedHa * days;
        }
    }

    /** What comes of a spring that is known beforehand, where {@code lived} came of it without. */
    Outcome foreseen(GroundRecord spring, SpringFigures lived) {
        CompiledSeason known = CompiledSeason.of(season.inSpring(spring));
        Plan plan = PlanRecorder.record(
                known, SpringPlan.first(known).improved(steps, seed, 1).orders(), SOURCE);
        Outcome planned = new Outcome(plan.totals().lateHaDays(), plan.totals().unservedHa());
        Outcome asLived = new Outcome(lived.lateHaDays(), lived.unservedHa());
        return planned.weighed(season.days()) < asLived.weighed(season.days()) ? planned : asLived;
    }

    /** The means of both, spring by spring in the same order. */
    static Foresight means(List<Outcome> foreseen, List<SpringFigures> lived) {
        int springs = lived.size();
        return new Foresight(
                springs,
                mean(
                        springs,
                        IntStream.range(0, springs)
                                .mapToDouble(i -> foreseen.get(i).lateHaDays())
                                .sum()),
                mean(
                        springs,
                        IntStream.range(0, springs)
                                .mapToDouble(i -> foreseen.get(i).unservedHa())
                                .sum()),
                mean(
                        springs,
                        lived.stream().mapToDouble(SpringFigures::lateHaDays).sum()),
                mean(
                        springs,
                        lived.stream().mapToDouble(SpringFigures::unservedHa).sum()));
    }

    private static double mean(int springs, double sum) {
        return sum / springs;
    }
}

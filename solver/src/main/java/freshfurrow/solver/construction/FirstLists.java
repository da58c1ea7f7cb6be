package freshfurrow.solver.construction;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.estimate.SeasonEstimate;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import freshfurrow.solver.stop.StopSignal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Lists to begin the search with: of those that several rules make, the ones with the best score. */
public final class FirstLists {
    /** How much longer planting a field takes than without fills and waiting: no way to know before it is played out. */
    private static final double[] SLOWNESS = {1, 1.4, 2.2};

    private static final double[] DAYS_OF_SLACK = {3, 7};
    private static final double[] LOOK_AHEAD = {1, 2, 6};
    private static final double[] DISLIKE_OF_ROADS = {0.1, 0.3};

    private FirstLists() {}

    /** The best of all rules by the score of the timeline, {@link #byHand} among them. */
    public static FieldLists best(CompiledSeason season) {
        return best(season, StopSignal.untilTold());
    }

    /**
     * The best of the rules that there is time for.
     *
     * @param stop once set, no more rules are tried; {@link #byHand} always is
     */
    public static FieldLists best(CompiledSeason season, StopSignal stop) {
        SeasonEstimate estimate = new SeasonEstimate(season);
        FieldLists byHand = byHand(season);
        List<FieldLists> lists = Stream.concat(
                        Stream.of(byHand),
                        others(season, estimate, stop).parallelStream()
                                .map(Supplier::get)
                                .flatMap(Optional::stream))
                .distinct()
                .toList();
        Scored best = lists.parallelStream()
                .filter(one -> one.equals(byHand) || !stop.isSet())
                .map(one -> Scored.of(season, one))
                .max(Comparator.comparing(Scored::score))
                .orElseThrow();
        return season.mayGoWithout() && !stop.isSet()
                ? WhoGoesWithout.choices(season).stream()
                        .map(fields -> Scored.of(season, best.lists().goingWithout(fields)))
                        .reduce(best, Scored::orBetter)
                        .lists()
                : best.lists();
    }

    /**
     * The lists of someone who plans by hand: whichever planter is free first takes the field whose window closes first,
     * and of several that close on the same day the nearest.
     */
    public static FieldLists byHand(CompiledSeason season) {
        SeasonEstimate estimate = new SeasonEstimate(season);
        return new Dispatch(season, estimate, SLOWNESS[0], StopSignal.untilTold())
                .lists(new ClosingSoon(estimate, 0))
                .orElseThrow();
    }

    /** All rules but that of {@link #byHand}. */
    private static List<Supplier<Optional<FieldLists>>> others(
            CompiledSeason season, SeasonEstimate estimate, StopSignal stop) {
        List<Supplier<Optional<FieldLists>>> others = new ArrayList<>();
        for (double slowness : SLOWNESS) {
            Dispatch dispatch = new Dispatch(season, estimate, slowness, stop);
            if (slowness != SLOWNESS[0]) {
                others.add(() -> dispatch.lists(new ClosingSoon(estimate, 0)));
            }
            for (double days : DAYS_OF_SLACK) {
                others.add(() -> dispatch.lists(new ClosingSoon(estimate, days)));
            }
            for (double lookAhead : LOOK_AHEAD) {
                for (double dislike : DISLIKE_OF_ROADS) {
                    others.add(() -> dispatch.lists(new CostOfDelay(estimate, slowness, lookAhead, dislike)));
                }
            }
        }
        return others;
    }

    private record Scored(FieldLists lists, HardMediumSoftLongScore score) {
        static Scored of(CompiledSeason season, FieldLists lists) {
            return new Scored(lists, new ListPlayer(season).score(lists));
        }

        Scored orBetter(Scored other) {
            return other.score.compareTo(score) > 0 ? other : this;
        }
    }
}

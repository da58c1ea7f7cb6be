package freshfurrow.solver.construction;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.construction.Convoy.Way;
import freshfurrow.solver.estimate.SeasonEstimate;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import freshfurrow.solver.stop.StopSignal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Lists to begin the search with: of those that several rules make, the ones with the best score. */
public final class FirstLists {
    /** How much longer planting a field takes than without fills and waiting: no way to know before it is played out. */
    private static final double[] SLOWNESS = {1, 1.4, 2.2};

    /** Of {@code SLOWNESS}, what convoys are sent with that are not played as they go. */
    private static final double USUAL_SLOWNESS = SLOWNESS[1];

    private static final int BEST_CONVOYS = 2;

    /** Smaller seasons end no better from a convoy, as far as was measured. */
    private static final int LEAST_FIELDS_OF_A_CONVOY = 100;

    /** To play convoys as they go takes some seconds of 1,000 fields, and minutes of 5,000. */
    private static final int MOST_FIELDS_PLAYED = 1_500;

    private static final double[] DAYS_OF_SLACK = {3, 7};
    private static final double[] LOOK_AHEAD = {1, 2, 6};
    private static final double[] DISLIKE_OF_ROADS = {0.1, 0.3};

    private final CompiledSeason season;
    private final SeasonEstimate estimate;
    private final StopSignal stop;

    private FirstLists(CompiledSeason season, StopSignal stop) {
        this.season = season;
        this.estimate = new SeasonEstimate(season);
        this.stop = stop;
    }

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
        return severalBest(season, stop).get(0);
    }

    /**
     * The best lists, and then the best of another kind: a search that begins with both does not depend on which kind suits the season.
     *
     * @param stop as for {@link #best(CompiledSeason, StopSignal)}
     * @return one or more
     */
    public static List<FieldLists> severalBest(CompiledSeason season, StopSignal stop) {
        return new FirstLists(season, stop).severalBest();
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

    private List<FieldLists> severalBest() {
        Scored byRule = scored(rules()).stream().reduce(score(byHand(season)), Scored::orBetter);
        Stream<Scored> convoy = convoys().stream().reduce(Scored::orBetter).stream();
        return Stream.concat(Stream.of(byRule), convoy)
                .map(this::orWithout)
                .sorted(Comparator.comparing(Scored::score).reversed())
                .map(Scored::lists)
                .distinct()
                .toList();
    }

    /** The lists, or the same with fields that go without extract where those are better. */
    private Scored orWithout(Scored scored) {
        return season.mayGoWithout() && !stop.isSet()
                ? WhoGoesWithout.choices(season).stream()
                        .map(fields -> score(scored.lists().goingWithout(fields)))
                        .reduce(scored, Scored::orBetter)
                : scored;
    }

    /** All rules but that of {@link #byHand} and convoys. */
    private List<Rule> rules() {
        List<Rule> rules = new ArrayList<>();
        for (double slowness : SLOWNESS) {
            if (slowness != SLOWNESS[0]) {
                rules.add(new Rule(new ClosingSoon(estimate, 0), slowness));
            }
            for (double days : DAYS_OF_SLACK) {
                rules.add(new Rule(new ClosingSoon(estimate, days), slowness));
            }
            for (double lookAhead : LOOK_AHEAD) {
                for (double dislike : DISLIKE_OF_ROADS) {
                    rules.add(new Rule(new CostOfDelay(estimate, slowness, lookAhead, dislike), slowness));
                }
            }
        }
        return rules;
    }

    /** Of a large season, all convoys with the usual detours, and the best of them with others. */
    private List<Scored> convoys() {
        if (season.fieldCount() < LEAST_FIELDS_OF_A_CONVOY) {
            return List.of();
        }
        FieldMap map = new FieldMap(estimate);
        List<Sent> usual = sent(map, Convoys.usual());
        List<Way> others = usual.stream()
                .sorted(Comparator.comparing((Sent sent) -> sent.scored().score())
                        .reversed())
                .limit(BEST_CONVOYS)
                .flatMap(sent -> Convoys.others(sent.way()))
                .toList();
        return Stream.concat(usual.stream(), sent(map, others).stream())
                .map(Sent::scored)
                .toList();
    }

    /** What comes of convoys, as far as there is time. */
    private List<Sent> sent(FieldMap map, List<Way> ways) {
        return ways.parallelStream()
                .flatMap(way -> sent(new Convoy(estimate, map, way))
                        .filter(lists -> !stop.isSet())
                        .map(lists -> new Sent(way, score(lists)))
                        .stream())
                .toList();
    }

    private Optional<FieldLists> sent(Convoy convoy) {
        return season.fieldCount() <= MOST_FIELDS_PLAYED
                ? new PlayedDispatch(season, estimate, stop).lists(convoy)
                : new Dispatch(season, estimate, USUAL_SLOWNESS, stop).lists(convoy);
    }

    /** What comes of rules, as far as there is time. */
    private List<Scored> scored(List<Rule> rules) {
        return rules.parallelStream()
                .flatMap(rule -> new Dispatch(season, estimate, rule.slowness(), stop)
                        .lists(rule.next()).filter(lists -> !stop.isSet()).map(this::score).stream())
                .toList();
    }

    private Scored score(FieldLists lists) {
        return new Scored(lists, new ListPlayer(season).score(lists));
    }

    private record Rule(NextField next, double slowness) {}

    private record Sent(Way way, Scored scored) {}

    private record Scored(FieldLists lists, HardMediumSoftLongScore score) {
        Scored orBetter(Scored other) {
            return other.score.compareTo(score) > 0 ? other : this;
        }
    }
}

package freshfurrow.solver.construction;

import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.Timeline;
import freshfurrow.solver.construction.Convoy.Way;
import freshfurrow.solver.estimate.SeasonEstimate;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import freshfurrow.solver.schedule.Scoring;
import freshfurrow.solver.stop.StopSignal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Lists to begin the search with: of those that several rules make with more or fewer planters, the ones with the best score. */
public final class FirstLists {
    /** What convoys are sent with that are not played as they go: how much longer a field takes than without fills and waiting. */
    private static final double USUAL_SLOWNESS = 1.4;

    /** Of all rules, those that are tried with smaller fleets too in seasons of more fields than are played as they go. */
    private static final int BEST_RULES = 6;

    private static final int FLEETS_IN_VAIN = 2;

    private static final int BEST_CONVOYS = 2;

    /** Smaller seasons end no better from a convoy, as far as was measured. */
    private static final int LEAST_FIELDS_OF_A_CONVOY = 100;

    /** To play convoys as they go takes some seconds of 1,000 fields, and minutes of 5,000. */
    private static final int MOST_FIELDS_PLAYED = 1_500;

    /** Of what the best comes to on the medium level, that lists with less effort may be worse. */
    private static final double AS_GOOD = 0.05;

    /** And besides, as if all area were planted so late, days; but by money. */
    private static final double AS_GOOD_DAYS = 0.01;

    private static final int HUNDREDTHS = 100;

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
     * The best lists, and then others that may lead further: the best of all planters where time is short, else those with the least effort of about
     * as good ones, or the best of another kind.
     *
     * @param stop as for {@link #best(CompiledSeason, StopSignal)}
     * @return one or two
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
        return byHand(season, estimate, Fleet.whole(season));
    }

    private static FieldLists byHand(CompiledSeason season, SeasonEstimate estimate, Fleet whole) {
        Rule rule = Rule.all(estimate).get(0);
        return new Dispatch(season, estimate, rule.slowness(), StopSignal.untilTold())
                .lists(rule.next().apply(whole), whole)
                .orElseThrow();
    }

    private List<FieldLists> severalBest() {
        List<Made> byRule = byRules();
        List<Made> convoys = convoys(easiest(byRule), Made.best(byRule).orElseThrow(), byRule.get(0));
        List<Made> all = Stream.concat(byRule.stream(), convoys.stream()).toList();
        Made best = Made.best(all).orElseThrow();
        Optional<Made> second = second(best, all).or(() -> Made.best(byRule.contains(best) ? convoys : byRule));
        return Stream.concat(Stream.of(best), second.stream())
                .map(this::orWithout)
                .sorted(Comparator.comparing(Made::score).reversed())
                .map(Made::lists)
                .distinct()
                .toList();
    }

    /** Where some is late, as time is short, what all planters can do: the search finds more to better there. Else the easiest. */
    private Optional<Made> second(Made best, List<Made> all) {
        Optional<Made> second = best.isLate()
                ? Made.best(all.stream().filter(made -> made.fleet().isWhole()).toList())
                : Optional.of(easiest(all));
        return second.filter(made -> !made.equals(best));
    }

    private Made easiest(List<Made> several) {
        return Made.easiest(several, worse(Made.best(several).orElseThrow())).orElseThrow();
    }

    /** On the medium level, that lists with less effort may be worse. */
    private long worse(Made best) {
        Season plain = season.season();
        double areaHa = plain.fields().stream().mapToDouble(Field::areaHa).sum();
        double late = plain.goals().byMoney().isPresent() ? 0 : AS_GOOD_DAYS * areaHa * HUNDREDTHS;
        return Math.round(AS_GOOD * -best.score().mediumScore() + late);
    }

    /** The lists, or the same with fields that go without extract where those are better. */
    private Made orWithout(Made made) {
        Stream<Made> without = season.mayGoWithout() && !stop.isSet()
                ? WhoGoesWithout.choices(season).stream()
                        .map(fields -> made(made.lists().goingWithout(fields), made.fleet()))
                : Stream.of();
        return Made.best(Stream.concat(Stream.of(made), without).toList()).orElseThrow();
    }

    /** By all rules with the whole fleet, and with smaller ones as long as that leads further. */
    private List<Made> byRules() {
        List<Fleet> fleets = Fleets.of(season, estimate);
        Fleet whole = fleets.get(0);
        List<Made> made = new ArrayList<>();
        List<Rule> rules = Rule.all(estimate);
        By<Rule> hand = new By<>(rules.get(0), made(byHand(season, estimate, whole), whole));
        int inVain = 0;
        for (Fleet fleet : fleets) {
            List<By<Rule>> next = fleet.equals(whole)
                    ? Stream.concat(Stream.of(hand), by(rules.subList(1, rules.size()), whole).stream())
                            .toList()
                    : by(rules, fleet);
            next.forEach(by -> made.add(by.made()));
            inVain = Made.best(made).orElseThrow().fleet().equals(fleet)
                            || easiest(made).fleet().equals(fleet)
                    ? 0
                    : inVain + 1;
            if (inVain == FLEETS_IN_VAIN || next.isEmpty()) {
                break;
            }
            if (season.fieldCount() > MOST_FIELDS_PLAYED) {
                rules = By.best(next, BEST_RULES);
            }
        }
        return made;
    }

    private List<By<Rule>> by(List<Rule> rules, Fleet fleet) {
        return each(
                rules,
                rule -> new Dispatch(season, estimate, rule.slowness(), stop)
                        .lists(rule.next().apply(fleet), fleet),
                fleet);
    }

    /**
     * Of a large season, all convoys with the usual detours with the fleet that is easiest by rules, and the best of them with other detours, and with
     * the fleets that are best by rules and by hand.
     */
    private List<Made> convoys(Made easiest, Made best, Made byHand) {
        if (season.fieldCount() < LEAST_FIELDS_OF_A_CONVOY) {
            return List.of();
        }
        FieldMap map = new FieldMap(estimate);
        Fleet fleet = easiest.fleet();
        List<By<Way>> usual = each(Convoys.usual(), way -> lists(new Convoy(estimate, map, way), fleet), fleet);
        List<Way> bestWays = By.best(usual, BEST_CONVOYS);
        List<Way> others = bestWays.stream().flatMap(Convoys::others).toList();
        Stream<By<Way>> withMore = Stream.of(best.fleet(), byHand.fleet())
                .filter(more -> !more.equals(fleet))
                .distinct()
                .flatMap(more -> each(bestWays, way -> lists(new Convoy(estimate, map, way), more), more).stream());
        Stream<By<Way>> turned = each(others, way -> lists(new Convoy(estimate, map, way), fleet), fleet).stream();
        return Stream.of(usual.stream(), turned, withMore)
                .flatMap(Function.identity())
                .map(By::made)
                .toList();
    }

    private Optional<FieldLists> lists(Convoy convoy, Fleet fleet) {
        return season.fieldCount() <= MOST_FIELDS_PLAYED
                ? new PlayedDispatch(season, estimate, stop).lists(convoy, fleet)
                : new Dispatch(season, estimate, USUAL_SLOWNESS, stop).lists(convoy, fleet);
    }

    /** What comes of ways to make lists, as far as there is time. */
    private <W> List<By<W>> each(List<W> ways, Function<W, Optional<FieldLists>> lists, Fleet fleet) {
        return ways.parallelStream()
                .flatMap(
                        way -> lists
                                .apply(way)
                                .filter(found -> !stop.isSet())
                                .map(found -> new By<>(way, made(found, fleet)))
                                .stream())
                .toList();
    }

    private Made made(FieldLists lists, Fleet fleet) {
        Timeline played = new ListPlayer(season).play(lists);
        return new Made(lists, Scoring.BY_GOALS.of(played), played.lateDm2Days() > 0, fleet);
    }

    private record By<W>(W way, Made made) {
        /** The ways by which the best lists were made, the best first. */
        static <W> List<W> best(List<By<W>> several, int most) {
            return several.stream()
                    .sorted(Comparator.comparing((By<W> by) -> by.made().score())
                            .reversed())
                    .limit(most)
                    .map(By::way)
                    .toList();
        }
    }
}

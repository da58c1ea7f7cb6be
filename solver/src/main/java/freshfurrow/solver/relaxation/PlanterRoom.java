package freshfurrow.solver.relaxation;

import static freshfurrow.model.quantity.Factors.DAY_S;

import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.WorkingTime;
import freshfurrow.solver.linear.LinearProgram;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * What the planters of a season can plant on a day.
 *
 * <p>Proof. A load of area a of recipe r that planter p plants takes it at least a / capacity to plant, the pumping of its mix at
 * the rate of the fastest rig, and a fill setup; no load is larger than {@link LargestLoads}, so the setup is at least its
 * share by area. That gives seconds(p, r) per area. On a day, what a planter plants on some soils, and the fills for it, lie in
 * its hours up to the last moment at which one of these soils may be planted. Only a load filled before the day began may be missing
 * there, and there is at most one such load a planter, and none if its hold time is over before the planter's hours begin. What a
 * planter has in its tank when the season begins to be played out is such a load.
 * Hence, for all sets S of planters and all factors w of recipes, the areas of fields that only planters of S may plant keep to
 *
 * <p>sum of w(r) x area(r) &lt;= sum over p in S of time(p) x the largest w(r) / seconds(p, r).
 *
 * <p>What is planted without extract counts as of a recipe of its own, of which an area takes no more than a / capacity.
 *
 * <p>Rows are added for the sets of planters that groups have and their unions, and for those sets of soils that a wet
 * day tells apart. By the theorem of Hall on flows these say as much as areas by planter would, were all recipes alike.
 */
final class PlanterRoom {
    private static final double ROUNDING = 1 + 1e-9;
    private static final int MOST_SETS = 16;

    private final CompiledSeason season;
    private final WorkingTime time;
    private final Relaxation relaxation;
    private final LargestLoads largest;
    private final LoadTimes times;
    private final double[] factor;
    private final double factorWithout;
    private final double[] dm2PerS;
    private final double[] carriedFillS;
    private final OvernightLoads overnight;
    private final Map<Integer, Set<Integer>> samplesOfAll;

    PlanterRoom(CompiledSeason season, WorkingTime time, Relaxation relaxation) {
        this.season = season;
        this.time = time;
        this.relaxation = relaxation;
        largest = new LargestLoads(season);
        times = new LoadTimes(season, largest);
        overnight = new OvernightLoads(season, time);
        samplesOfAll =
                samples(IntStream.range(0, relaxation.groups().size()).boxed().toList());
        factor = new double[season.season().recipes().size()];
        for (int r = 0; r < factor.length; r++) {
            factor[r] = rate(0) / rate(r);
        }
        factorWithout = rate(0)
                / IntStream.range(0, season.planterCount())
                        .mapToDouble(p -> 1 / times.plantingS(p))
                        .sum();
        dm2PerS = new double[season.planterCount()];
        carriedFillS = new double[season.planterCount()];
        for (int p = 0; p < dm2PerS.length; p++) {
            dm2PerS[p] = season.mayGoWithout() ? ROUNDING * factorWithout / times.plantingS(p) : 0;
            for (int r = 0; r < factor.length; r++) {
                dm2PerS[p] = Math.max(dm2PerS[p], ROUNDING * factor[r] / secondsPerDm2(p, r));
                carriedFillS[p] = Math.max(carriedFillS[p], times.setupS(p) + largest.dm2(p, r) * times.pumpingS(p, r));
            }
        }
    }

    void addRows() {
        for (BitSet planters : setsOfPlanters()) {
            List<Integer> groups = relaxation.groupsWithin(planters);
            Map<Integer, Set<Integer>> samples = samples(groups);
            for (int day = 0; day < relaxation.days(); day++) {
                addRows(planters, groups, samples, day);
            }
        }
    }

    private void addRows(BitSet planters, List<Integer> groups, Map<Integer, Set<Integer>> samples, int day) {
        double all = room(planters, samples, samples.keySet(), day);
        for (Set<Integer> soils : Subsets.of(samples.keySet())) {
            double room = room(planters, samples, soils, day);
            if (room < all || soils.size() == samples.size()) {
                LinearProgram.Sum planted = new LinearProgram.Sum();
                for (int g : groups) {
                    FieldGroup group = relaxation.groups().get(g);
                    if (soils.contains(group.soil())) {
                        relaxation.addPlantedFromTo(planted, factor[group.recipe()], factorWithout, g, day, day);
                    }
                }
                relaxation.addAtMost(planted, room * ROUNDING);
            }
        }
    }

    /** Of all planters and any soil, in the unit of the rows. */
    double ofDay(int day) {
        return room(FieldGroups.allPlanters(season), samplesOfAll, samplesOfAll.keySet(), day);
    }

    /** How many planters still work on a day after the last moment at which they may plant anything. */
    int workingAfterPlanting(int day) {
        return (int) FieldGroups.allPlanters(season).stream()
                .filter(p ->
                        time.planterS(p, plantableUntil(p, samplesOfAll, samplesOfAll.keySet(), day), (day + 1) * DAY_S)
                                > 0)
                .count();
    }

    /** What an area of a recipe counts in the rows. */
    double factor(int recipe) {
        return factor[recipe];
    }

    /** What an area without extract counts in the rows. */
    double factorWithout() {
        return factorWithout;
    }

    /** The most that a planter plants in a second, in the unit of the rows. */
    double dm2PerS(int planter) {
        return dm2PerS[planter];
    }

    /** Of each soil that the groups have, a field of each ground. */
    private Map<Integer, Set<Integer>> samples(List<Integer> groups) {
        Map<Integer, Set<Integer>> samples = new TreeMap<>();
        groups.forEach(g -> {
            FieldGroup group = relaxation.groups().get(g);
            samples.computeIfAbsent(group.soil(), none -> new TreeSet<>()).addAll(group.samples());
        });
        return samples;
    }

    private int plantableUntil(int p, Map<Integer, Set<Integer>> samples, Set<Integer> soils, int day) {
        return soils.stream()
                .flatMap(soil -> samples.getOrDefault(soil, Set.of()).stream())
                .mapToInt(field -> time.plantableUntil(p, field, day))
                .max()
                .orElse(day * DAY_S);
    }

    private double room(BitSet planters, Map<Integer, Set<Integer>> samples, Set<Integer> soils, int day) {
        int start = day * DAY_S;
        return planters.stream()
                .mapToDouble(p -> {
                    double hoursS = time.planterS(p, start, plantableUntil(p, samples, soils, day));
                    return hoursS == 0
                            ? 0
                            : dm2PerS[p] * (hoursS + (overnight.mayBeKept(p, day) ? carriedFillS[p] : 0));
                })
                .sum();
    }

    private double secondsPerDm2(int p, int recipe) {
        return times.treatingS(p, recipe) + times.setupS(p) / largest.dm2(p, recipe);
    }

    /** Of all planters together, dm2/s. */
    private double rate(int recipe) {
        double rate = 0;
        for (int p = 0; p < season.planterCount(); p++) {
            rate += 1 / secondsPerDm2(p, recipe);
        }
        return rate;
    }

    private Set<BitSet> setsOfPlanters() {
        BitSet all = FieldGroups.allPlanters(season);
        Set<BitSet> sets = new LinkedHashSet<>();
        sets.add(all);
        for (FieldGroup group : relaxation.groups()) {
            for (BitSet set : List.copyOf(sets)) {
                if (!set.equals(all) && sets.size() < MOST_SETS) {
                    BitSet union = (BitSet) set.clone();
                    union.or(group.planters());
                    sets.add(union);
                }
            }
            sets.add(group.planters());
        }
        return sets;
    }
}

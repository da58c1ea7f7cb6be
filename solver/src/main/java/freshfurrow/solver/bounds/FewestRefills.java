package freshfurrow.solver.bounds;

import static freshfurrow.model.quantity.Factors.ML_PER_L;

import freshfurrow.model.season.ExtractAt;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.WaterPoint;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.relaxation.FieldGroups;
import freshfurrow.solver.relaxation.LargestLoads;
import freshfurrow.solver.relaxation.LargestMixes;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Planter fills and water trips that no plan can go below.
 *
 * <p>Proof for fills. A load is of one recipe and is planted by one planter, and none is larger than that planter's {@link
 * LargestLoads}. So each area of a field takes at least its share of the largest load of any planter that may plant
 * the field; loads of different recipes are different, so the sum of shares of each recipe is rounded up.
 *
 * <p>Proof for water trips. Nurse tanks are empty when the season begins. Of all mix {@link LargestLoads#LEAST_SHARE}
 * is drawn as water at the least, and a draw is at most the rig's nurse tank and the largest daily limit. A rig that extracts at the
 * water draws for one mix, of which none is larger than {@link LargestMixes}. Where all rigs do so, a draw is for one recipe, so that
 * the draws of each are rounded up.
 *
 * <p>What is on board when the season begins to be played out, if it is already under way, takes no fill or no draw: as much area as
 * the mix in planters' tanks serves needs no fill, and may be of what takes the largest share of a load in that recipe; and as much
 * as all mix and water on board serves, at the least rate, needs no draw.
 *
 * <p>Where some area is left unplanted, the sums shrink by what that area takes at the most.
 */
final class FewestRefills {
    /** So that rounding of sums never asks for one more. */
    private static final double ROUNDING = 1e-6;

    private final CompiledSeason season;
    private final LargestLoads largest;
    private final LargestMixes mixes;
    private final double[] drawsPerDm2;

    FewestRefills(CompiledSeason season) {
        this.season = season;
        this.largest = new LargestLoads(season);
        this.mixes = new LargestMixes(season);
        drawsPerDm2 = drawsPerDm2();
    }

    /** @param unplantedDm2 area left of fields that some planter may plant */
    int fills(double unplantedDm2) {
        return fewest(unplantedDm2, inTanksDm2(), true, (planter, recipe) -> 1 / largest.dm2(planter, recipe));
    }

    /** @param unplantedDm2 area left of fields that some planter may plant */
    int waterTrips(double unplantedDm2) {
        boolean recipesApart = season.season().rigs().stream().allMatch(rig -> rig.extractAt() == ExtractAt.WATER);
        return fewest(
                unplantedDm2 + onBoardDm2(),
                new double[season.season().recipes().size()],
                recipesApart,
                (planter, recipe) -> drawsPerDm2[recipe]);
    }

    /** What is on board when the season begins to be played out serves no more than that. */
    double onBoardDm2() {
        return sum(inTanksDm2()) + onRigsDm2();
    }

    /** By recipe. */
    private double[] inTanksDm2() {
        double[] dm2 = new double[season.season().recipes().size()];
        for (int p = 0; p < season.planterCount(); p++) {
            dm2[season.tankRecipe(p)] += season.tankDm2(p);
        }
        return dm2;
    }

    private static double sum(double[] dm2) {
        return Arrays.stream(dm2).sum();
    }

    private double onRigsDm2() {
        double leastLPerDm2 = Double.MAX_VALUE;
        for (int r = 0; r < season.season().recipes().size(); r++) {
            leastLPerDm2 = Math.min(leastLPerDm2, largest.mixLPerDm2(r));
        }
        double dm2 = 0;
        for (int r = 0; r < season.season().rigs().size(); r++) {
            double mixL = season.rigMixDm2(r) * largest.mixLPerDm2(season.rigMixRecipe(r));
            dm2 += (mixL + season.rigWaterMl(r) / ML_PER_L) / (leastLPerDm2 * LargestLoads.LEAST_SHARE);
        }
        return dm2;
    }

    private interface Rate {
        double perDm2(int planter, int recipe);
    }

    /** @param onBoardDm2 by recipe, needs nothing */
    private int fewest(double unplantedDm2, double[] onBoardDm2, boolean recipesApart, Rate rate) {
        List<NavigableMap<Double, Double>> dm2ByRate = dm2ByRate(rate);
        double sum = 0;
        double mostPerDm2 = 0;
        int apart = 0;
        for (int recipe = 0; recipe < dm2ByRate.size(); recipe++) {
            NavigableMap<Double, Double> highestFirst = dm2ByRate.get(recipe);
            double ofRecipe = of(highestFirst, Double.MAX_VALUE);
            sum += ofRecipe;
            apart += roundedUp(ofRecipe - of(highestFirst, onBoardDm2[recipe]));
            mostPerDm2 = Math.max(mostPerDm2, highestFirst.isEmpty() ? 0 : highestFirst.firstKey());
        }
        return recipesApart && unplantedDm2 == 0
                ? apart
                : roundedUp(sum - (unplantedDm2 + sum(onBoardDm2)) * mostPerDm2);
    }

    /** By recipe, the area at each rate, the highest rate first. */
    private List<NavigableMap<Double, Double>> dm2ByRate(Rate rate) {
        List<NavigableMap<Double, Double>> all = new ArrayList<>();
        season.season().recipes().forEach(recipe -> all.add(new TreeMap<>(Comparator.reverseOrder())));
        Map<List<Object>, Double> known = new HashMap<>();
        for (int f = 0; f < season.fieldCount(); f++) {
            int recipe = season.recipeIndex(f);
            BitSet planters = FieldGroups.planters(season, f);
            // the same for most fields
            double perDm2 = known.computeIfAbsent(List.of(recipe, planters), alike -> planters.stream()
                    .mapToDouble(planter -> rate.perDm2(planter, recipe))
                    .min()
                    .orElse(0));
            all.get(recipe).merge(perDm2, (double) season.areaDm2(f), Double::sum);
        }
        return all;
    }

    /** What so much area takes, or all of it where there is less, at the highest rates. */
    private static double of(NavigableMap<Double, Double> highestFirst, double mostDm2) {
        double taken = 0;
        double left = mostDm2;
        for (Map.Entry<Double, Double> atRate : highestFirst.entrySet()) {
            double dm2 = Math.min(left, atRate.getValue());
            taken += atRate.getKey() * dm2;
            left -= dm2;
        }
        return taken;
    }

    private static int roundedUp(double sum) {
        return (int) Math.max(0, Math.ceil(sum - ROUNDING));
    }

    /** By recipe. */
    private double[] drawsPerDm2() {
        return IntStream.range(0, season.season().recipes().size())
                .mapToDouble(recipe -> 1
                        / IntStream.range(0, season.season().rigs().size())
                                .mapToDouble(rig -> mostOfADrawDm2(rig, recipe))
                                .max()
                                .orElse(0))
                .toArray();
    }

    private double mostOfADrawDm2(int rig, int recipe) {
        Rig itself = season.season().rigs().get(rig);
        double largestLimitL = season.season().waterPoints().stream()
                .mapToDouble(FewestRefills::limitL)
                .max()
                .orElse(0);
        double mostDm2 = (Math.min(itself.nurseTankL(), largestLimitL) + 0.001)
                / (LargestLoads.LEAST_SHARE * largest.mixLPerDm2(recipe));
        return itself.extractAt() == ExtractAt.WATER ? mixes.dm2(rig, recipe, mostDm2) : mostDm2;
    }

    private static double limitL(WaterPoint point) {
        return point.dailyLimitL().orElse(Double.MAX_VALUE);
    }
}

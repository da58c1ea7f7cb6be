package freshfurrow.solver.bounds;

import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.ExtractAt;
import freshfurrow.model.season.Rig;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.relaxation.FieldGroups;
import freshfurrow.solver.relaxation.LargestLoads;
import freshfurrow.solver.relaxation.LargestMixes;
import freshfurrow.solver.relaxation.WaysToWater;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What rigs drive at the least, with what is mounted on them.
 *
 * <p>Proof. From one draw to the next a rig brings no more than its nurse tank or, if it makes batches at the water, one mix ({@link LargestMixes}), and comes to each place where it hands any of that over. So it drives at least to
 * the nearest field and back and, for each field where it hands over, its share of the tank or mix times twice what that is farther from water ({@link WaysToWater}), as the shares come to 1 at the most. A planter takes all loads for a field in that field, but the one
 * by which it begins it: that one it may take where it stands. So all of a field that is planted with extract but a largest load is handed over there. The ways may be counted as no longer than any length.
 *
 * <p>After its last draw a rig need not come back, and so drives half of that at the least; before its first it comes from where it stands. What is on board when the season begins to be played out, of rigs or of planters, is
 * handed over without a draw, and takes its area off where that counts most. What is mounted on a rig goes with it: its own drives between fields are part of these ways, at the faster of both speeds.
 */
final class RigsDriving {
    private static final double[] SHARES = {0, 0.25, 0.5, 0.75, 1};
    private static final double EASED = 1 - 1e-9;
    private static final double ROUNDING_L = 0.001;

    private final CompiledSeason season;
    private final LargestLoads largest;
    private final LargestMixes mixes;
    private final WaysToWater ways;

    RigsDriving(CompiledSeason season) {
        this.season = season;
        largest = new LargestLoads(season);
        mixes = new LargestMixes(season);
        ways = new WaysToWater(season);
    }

    /**
     * Of all plans with so many draws or more, s.
     *
     * @param withoutDm2 left unplanted or without extract, or planted out of what was on board, at the most
     */
    double leastS(int waterTrips, double withoutDm2) {
        double least = 0;
        for (double share : SHARES) {
            least = Math.max(least, leastS(waterTrips, withoutDm2, Math.max(ways.nearest(), ways.within(share))));
        }
        return least;
    }

    private double leastS(int waterTrips, double withoutDm2, double farthestM) {
        if (waterTrips == 0 || rigs().isEmpty()) {
            return 0;
        }
        double fastest = IntStream.range(0, rigs().size())
                .mapToDouble(rig -> 1 / fastestMPerS(rig))
                .min()
                .orElse(0);
        double thereAndBack = 2 * ways.nearest() * fastest * waterTrips;
        return Math.max(0, thereAndBack + farther(withoutDm2, farthestM) + beforeAndAfter(farthestM)) * EASED;
    }

    /** From where rigs stand to their first draw, less that they need not come back from the last. */
    private double beforeAndAfter(double farthestM) {
        double[] each = IntStream.range(0, rigs().size())
                .mapToDouble(rig -> (ways.from(standsAt(rig)) - farthestM) / fastestMPerS(rig))
                .sorted()
                .toArray();
        double ofSome = 0;
        for (double ofRig : each) {
            ofSome += Math.min(0, ofRig);
        }
        return ofSome < 0 ? ofSome : each[0];
    }

    /** What handing over in fields that are not the nearest adds, but for what of them is planted without. */
    private double farther(double withoutDm2, double farthestM) {
        List<Part> dearestFirst = IntStream.range(0, season.fieldCount())
                .mapToObj(field -> part(field, farthestM))
                .filter(part -> part.dm2 > 0 && part.perDm2 > 0)
                .sorted(Comparator.comparingDouble(part -> -part.perDm2))
                .toList();
        double sum = 0;
        double off = withoutDm2;
        for (Part part : dearestFirst) {
            double without = Math.min(off, part.dm2);
            off -= without;
            sum += (part.dm2 - without) * part.perDm2;
        }
        return sum;
    }

    /** Of a field: what is handed over there, and what each dm2 of that takes besides the way to the nearest, s. */
    private record Part(double dm2, double perDm2) {}

    private Part part(int field, double farthestM) {
        double fartherM = Math.min(ways.metres(field), farthestM) - ways.nearest();
        int recipe = season.recipeIndex(field);
        double firstLoadDm2 = FieldGroups.planters(season, field).stream()
                .mapToDouble(planter -> largest.dm2(planter, recipe))
                .max()
                .orElse(Double.MAX_VALUE);
        double perDm2 = IntStream.range(0, rigs().size())
                .mapToDouble(rig -> 2 * fartherM / fastestMPerS(rig) / mostOfATripDm2(rig, recipe))
                .min()
                .orElse(0);
        return new Part(season.areaDm2(field) - firstLoadDm2, perDm2);
    }

    private double mostOfATripDm2(int rig, int recipe) {
        double tankDm2 =
                (rigs().get(rig).nurseTankL() + ROUNDING_L) / (LargestLoads.LEAST_SHARE * largest.mixLPerDm2(recipe));
        return rigs().get(rig).extractAt() == ExtractAt.WATER ? mixes.dm2(rig, recipe, tankDm2) : tankDm2;
    }

    private String standsAt(int rig) {
        Rig itself = rigs().get(rig);
        return season.season().standing().stream()
                .flatMap(standing -> standing.rigs().entrySet().stream())
                .filter(standing -> standing.getKey().equals(itself.id()))
                .map(standing -> standing.getValue().at())
                .findFirst()
                .orElse(itself.at());
    }

    private double fastestMPerS(int rig) {
        Rig itself = rigs().get(rig);
        return season.season().applicators().stream()
                .filter(machine -> machine.on().filter(itself.id()::equals).isPresent())
                .mapToDouble(Applicator::roadSpeedMPerS)
                .reduce(itself.roadSpeedMPerS(), Math::max);
    }

    private List<Rig> rigs() {
        return season.season().rigs();
    }
}

package freshfurrow.solver.relaxation;

import static freshfurrow.model.quantity.Factors.DAY_S;
import static freshfurrow.model.quantity.Factors.DM2_PER_M2;
import static freshfurrow.model.quantity.Factors.MG_PER_KG;

import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.WaterPoint;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.WorkingTime;
import freshfurrow.model.timeline.tables.Leeway;
import freshfurrow.solver.linear.LinearProgram;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What the rigs of a season can bring within some days.
 *
 * <p>Proof. Take what is planted from day a to day b. All batches of a load end within the hold time before its last drop, and are
 * planted after they end and after the transfer; so the batches and transfers of all that is planted in these days lie
 * between the first moment of day a at which a planter may plant less the longest hold time less one batch, and the last such moment
 * of day b. Within these, and within its hours, a rig spends for the area A of recipe r
 *
 * <ul>
 *   <li>compost / full batch x (batch time + clean), but for the clean after its last batch (the batches of a load hold up to a gram
 *       more than full ones, and the last of each lot may lack ten, which is allowed for); no smaller batch takes less than its share;
 *   <li>the transfers: pumping, and the shortest setup for each load, of which none is larger than {@link LargestLoads};
 *   <li>its water trips: a nurse tank of water or mix may be on board before, all else is drawn in the time, a nurse tank a draw at
 *       the most; each draw takes the shortest hooking up and treatment, and for each litre what it takes at one of the points, less what is saved on as much as
 *       faster points may give ({@link WaterRoom}). From one draw to the next a rig serves planters with a nurse tank or less, and drives at
 *       least to the farthest of them and back ({@link WaysToWater}). A planter takes all loads for a field in that field, but the one by which it begins it: that one
 *       it may take in any field. So a rig drives for each field to it and back, times its share of the nurse tank, of a largest load to the nearest and back only.
 *       Of these ways three may lie outside: there and back with what is on board before, and back at the end. These count only in the rows with
 *       water, of which a load takes {@link LargestLoads#LEAST_SHARE} at the least, in some of them no way as longer than that to the field in the middle or the nearest.
 * </ul>
 *
 * <p>What a machine that is mounted on a rig drives, that rig drives, at the machine's speed. What mix planters and rigs have on board when the season begins to be played out takes no time of the rigs, so its area is added to
 * the room of every row.
 *
 * <p>That gives seconds(rig, r) per area and seconds(rig) that may be missing, and with factors of recipes as in {@link
 * PlanterRoom} the rows: sum of w(r) x area(r) &lt;= sum over rigs of (hours + missing) x the largest w(r) / seconds(rig, r). The ways of
 * a field come to its area by {@link FieldCosts}, in the same unit by the rig for which that is least.
 */
final class RigRoom {
    private static final double ROUNDING = 1 + 1e-9;
    private static final double[] SHARES = {0.5, 1};
    private static final int MOST_FLOWS = 3;
    private static final double GRAM_KG = 0.001;

    private final CompiledSeason season;
    private final WorkingTime time;
    private final Relaxation relaxation;
    private final LargestLoads loads;
    private final int longestHoldS;
    private final double shortestSetupS;
    private final double leastBeforeDrawS;
    private final WaysToWater ways;
    private final WaterRoom water;

    RigRoom(CompiledSeason season, WorkingTime time, Relaxation relaxation) {
        this.season = season;
        this.time = time;
        this.relaxation = relaxation;
        loads = new LargestLoads(season);
        longestHoldS = season.season().longestHoldS();
        shortestSetupS = season.season().applicators().stream()
                .mapToInt(Applicator::fillSetupS)
                .min()
                .orElse(0);
        leastBeforeDrawS = season.season().waterPoints().stream()
                .mapToInt(WaterPoint::beforeDrawS)
                .min()
                .orElse(0);
        ways = new WaysToWater(season);
        water = new WaterRoom(season, time);
    }

    void addRows() {
        List<Double> sPerL = season.season().waterPoints().stream()
                .map(point -> 1 / point.flowLPerS())
                .distinct()
                .sorted()
                .limit(MOST_FLOWS)
                .toList();
        List<DaySpans.Span> spans = DaySpans.of(relaxation.days());
        addRows(spans, new Trips(true, ways.nearest(), sPerL.isEmpty() ? 0 : sPerL.get(0)));
        addRows(spans.stream().filter(span -> span.first() == span.last()).toList(), Trips.NONE);
        for (double share : SHARES) {
            for (double ofPoint : sPerL) {
                addRows(
                        DaySpans.ofSeveralDays(relaxation.firstDay(), relaxation.days()),
                        new Trips(true, ways.within(share), ofPoint));
            }
        }
    }

    private void addRows(List<DaySpans.Span> spans, Trips trips) {
        double[] factor = IntStream.range(0, season.season().recipes().size())
                .mapToDouble(r -> rate(0, trips) / rate(r, trips))
                .toArray();
        double[] dm2PerS = season.season().rigs().stream()
                .mapToDouble(rig -> fastest(rig, factor, trips))
                .toArray();
        FieldCosts ofWays = new FieldCosts(season, costsOfWays(dm2PerS, trips));
        double[] elsewhere = takenElsewhere(dm2PerS, trips);
        spans.forEach(span -> addRow(span, trips, factor, dm2PerS, ofWays, elsewhere));
    }

    private void addRow(
            DaySpans.Span span, Trips trips, double[] factor, double[] dm2PerS, FieldCosts ofWays, double[] elsewhere) {
        int until = relaxation.plantableUntil(span.last(), time);
        int from = relaxation.plantableFrom(span.first(), time) - longestHoldS;
        LinearProgram.Sum planted = new LinearProgram.Sum();
        double room = madeBefore(factor, ofWays.largestPerDm2());
        for (int g = 0; g < relaxation.groups().size(); g++) {
            room += ofWays.addTreated(
                    relaxation, planted, factor[relaxation.groups().get(g).recipe()], g, span);
        }
        for (int field = 0; field < elsewhere.length; field++) {
            room += season.windowFirstDay(field) <= span.last() ? elsewhere[field] : 0;
        }
        int earliest = Integer.MAX_VALUE;
        for (int i = 0; i < dm2PerS.length; i++) {
            Rig rig = rig(i);
            int rigFrom = Math.max(0, from - rig.batchTimeS());
            earliest = Math.min(earliest, rigFrom);
            room += (time.rigS(i, rigFrom, Math.max(0, until)) + missingS(rig, trips)) * dm2PerS[i];
        }
        if (trips.counted()) {
            double sparedS = sparedAtFastPointsS(earliest / DAY_S, span.last(), trips);
            room += sparedS * Arrays.stream(dm2PerS).max().orElse(0);
        }
        relaxation.addAtMost(planted, room * ROUNDING);
    }

    /** What draws at points faster than the trips' take less than they are counted with, s. */
    private double sparedAtFastPointsS(int firstDay, int lastDay, Trips trips) {
        List<WaterPoint> points = season.season().waterPoints();
        double seconds = 0;
        for (int w = 0; w < points.size(); w++) {
            double saved = trips.sPerL() - 1 / points.get(w).flowLPerS();
            if (saved > 0) {
                seconds += saved * water.litres(w, firstDay, lastDay);
            }
        }
        return seconds;
    }

    /** By field, for each dm2 of it, in the unit of the rows. */
    private double[] costsOfWays(double[] dm2PerS, Trips trips) {
        double perLAndM = perLAndM(dm2PerS);
        double[] costs = new double[season.fieldCount()];
        for (int field = 0; trips.counted() && field < costs.length; field++) {
            costs[field] = perLAndM * 2 * Math.min(ways.metres(field), trips.farthestM()) * leastL(field);
        }
        return costs;
    }

    /** By field, what its ways are less in whole as the load by which it is begun may be taken at the nearest, in the unit of the rows. */
    private double[] takenElsewhere(double[] dm2PerS, Trips trips) {
        double perLAndM = perLAndM(dm2PerS);
        double[] less = new double[season.fieldCount()];
        for (int field = 0; trips.counted() && field < less.length; field++) {
            double fartherM = Math.max(0, Math.min(ways.metres(field), trips.farthestM()) - ways.nearest());
            double dm2 = Math.min((double) season.areaDm2(field), largestDm2(season.recipeIndex(field)));
            less[field] = perLAndM * 2 * fartherM * leastL(field) * dm2;
        }
        return less;
    }

    private double perLAndM(double[] dm2PerS) {
        double perLAndM = Double.MAX_VALUE;
        for (int i = 0; i < dm2PerS.length; i++) {
            perLAndM = Math.min(perLAndM, dm2PerS[i] / (rig(i).nurseTankL() * fastestMPerS(i)));
        }
        return perLAndM;
    }

    private double fastestMPerS(int i) {
        return season.season().applicators().stream()
                .filter(machine -> machine.on().filter(rig(i).id()::equals).isPresent())
                .mapToDouble(Applicator::roadSpeedMPerS)
                .reduce(rig(i).roadSpeedMPerS(), Math::max);
    }

    /** Water for a dm2 of a field. */
    private double leastL(int field) {
        return LargestLoads.LEAST_SHARE * loads.mixLPerDm2(season.recipeIndex(field));
    }

    private double largestDm2(int recipe) {
        return IntStream.range(0, season.planterCount())
                .mapToDouble(planter -> loads.dm2(planter, recipe))
                .max()
                .orElse(0);
    }

    private double fastest(Rig rig, double[] factor, Trips trips) {
        double fastest = 0;
        for (int r = 0; r < factor.length; r++) {
            fastest = Math.max(fastest, factor[r] / secondsPerDm2(rig, r, trips));
        }
        return fastest;
    }

    /** Of what is on board when the season begins to be played out, the planters' part takes no drive of a rig either. */
    private double madeBefore(double[] factor, double largestWayCost) {
        double area = 0;
        for (int p = 0; p < season.planterCount(); p++) {
            area += (factor[season.tankRecipe(p)] + largestWayCost) * season.tankDm2(p);
        }
        for (int r = 0; r < season.season().rigs().size(); r++) {
            area += factor[season.rigMixRecipe(r)] * season.rigMixDm2(r);
        }
        return area;
    }

    private double secondsPerDm2(Rig rig, int recipe, Trips trips) {
        double mixL = loads.mixLPerDm2(recipe);
        double seconds = loads.leastShareOfCompost()
                        * loads.compostMgPerDm2(recipe)
                        / MG_PER_KG
                        / (rig.batchCompostKg() + GRAM_KG)
                        * (rig.batchTimeS() + rig.cleanTimeS())
                + passOnS(rig, mixL)
                + shortestSetupS / largestDm2(recipe);
        return trips.counted()
                ? seconds + LargestLoads.LEAST_SHARE * mixL * (trips.sPerL() + leastBeforeDrawS / rig.nurseTankL())
                : seconds;
    }

    /** Of a dm2: to pump it over, or to spray it by what is mounted on the rig. */
    private double passOnS(Rig rig, double mixL) {
        return season.season().applicators().stream()
                .filter(machine -> machine.on().filter(rig.id()::equals).isPresent())
                .mapToDouble(machine -> 1 / (machine.fieldCapacityM2PerS() * DM2_PER_M2))
                .reduce(mixL / rig.transferLPerS(), Math::min);
    }

    private double missingS(Rig rig, Trips trips) {
        double lackingKg = (Leeway.MOST_LACKING_MG + 1)
                / MG_PER_KG
                * (season.season().compost().size() + (season.fetchesCompost() ? 1 : 0));
        double seconds = rig.cleanTimeS() + lackingKg / rig.batchCompostKg() * (rig.batchTimeS() + rig.cleanTimeS());
        return trips.counted()
                ? seconds
                        + rig.nurseTankL() * trips.sPerL()
                        + leastBeforeDrawS
                        + 3 * trips.farthestM() / rig.roadSpeedMPerS()
                : seconds;
    }

    private double rate(int recipe, Trips trips) {
        double rate = 0;
        for (Rig rig : season.season().rigs()) {
            rate += 1 / secondsPerDm2(rig, recipe, trips);
        }
        return rate;
    }

    private Rig rig(int i) {
        return season.season().rigs().get(i);
    }

    /**
     * What of water trips a row counts.
     *
     * @param farthestM no way is counted as longer than this
     * @param sPerL for each litre drawn, less what points save that are faster
     */
    private record Trips(boolean counted, double farthestM, double sPerL) {
        static final Trips NONE = new Trips(false, 0, 0);
    }
}

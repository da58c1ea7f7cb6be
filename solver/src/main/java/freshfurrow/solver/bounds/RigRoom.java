package freshfurrow.solver.bounds;

import freshfurrow.model.season.Planter;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.WaterPoint;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.WorkingTime;

/**
 * What the rigs of a season can bring within some days.
 *
 * <p>Proof. Take what is planted from day a to day b. All batches of a load end within the hold time before its last drop, and are
 * planted after they end and after the transfer; so the batches and transfers of all that is planted in these days lie
 * between the first moment of day a at which a planter may plant less the longest hold time less one batch, and the last such moment
 * of day b. Within these, and within its hours, a rig spends for the area A of recipe r
 *
 * <ul>
 *   <li>compost / full batch x (batch time + clean), but for the clean after its last batch (a load leaves up to a gram to the
 *       batch before, which is allowed for);
 *   <li>the transfers: pumping, and the shortest setup for each load, of which none is larger than {@link LargestLoads};
 *   <li>its water trips: a nurse tank of water or mix may be on board before, all else is drawn in the time, a nurse tank a draw at
 *       the most, at the highest flow; each draw takes the shortest treatment, the shortest way from a point to a field, and all but
 *       the first the way back. These count only in the rows with water.
 * </ul>
 *
 * <p>What mix planters and rigs have on board when the season begins to be played out takes no time of the rigs, so its area is added to
 * the room of every row.
 *
 * <p>That gives seconds(rig, r) per area and seconds(rig) that may be missing, and with factors of recipes as in {@link
 * PlanterRoom} the rows: sum of w(r) x area(r) &lt;= sum over rigs of (hours + missing) x the largest w(r) / seconds(rig, r).
 */
final class RigRoom {
    private static final double ROUNDING = 1 + 1e-9;
    private static final double GRAM_KG = 0.001;
    private static final double MG_PER_KG = 1e6;

    private final CompiledSeason season;
    private final WorkingTime time;
    private final Relaxation relaxation;
    private final LargestLoads loads;
    private final int longestHoldS;
    private final double shortestSetupS;
    private final double shortestWayM;
    private final double highestLPerS;
    private final double shortestTreatmentS;

    RigRoom(CompiledSeason season, WorkingTime time, Relaxation relaxation) {
        this.season = season;
        this.time = time;
        this.relaxation = relaxation;
        loads = new LargestLoads(season);
        longestHoldS =
                season.season().recipes().stream().mapToInt(Recipe::holdS).max().orElse(0);
        shortestSetupS = season.season().planters().stream()
                .mapToInt(Planter::fillSetupS)
                .min()
                .orElse(0);
        highestLPerS = season.season().waterPoints().stream()
                .mapToDouble(WaterPoint::flowLPerS)
                .max()
                .orElse(Double.MAX_VALUE);
        shortestTreatmentS = season.season().waterPoints().stream()
                .mapToInt(WaterPoint::treatmentS)
                .min()
                .orElse(0);
        shortestWayM = season.season().waterPoints().stream()
                .flatMapToDouble(point -> season.season().fields().stream()
                        .mapToDouble(field -> season.season().distances().metres(point.id(), field.id())))
                .min()
                .orElse(0);
    }

    void addRows() {
        for (DaySpans.Span span : DaySpans.of(relaxation.days())) {
            addRow(span, true);
            if (span.first() == span.last()) {
                addRow(span, false);
            }
        }
    }

    private void addRow(DaySpans.Span span, boolean withWater) {
        int until = relaxation.plantableUntil(span.last(), time);
        int from = relaxation.plantableFrom(span.first(), time) - longestHoldS;
        int recipes = season.season().recipes().size();
        double[] factor = new double[recipes];
        for (int r = 0; r < recipes; r++) {
            factor[r] = rate(0, withWater) / rate(r, withWater);
        }
        LinearProgram.Sum planted = new LinearProgram.Sum();
        for (int g = 0; g < relaxation.groups().size(); g++) {
            relaxation.addPlantedFromTo(
                    planted, factor[relaxation.groups().get(g).recipe()], g, span.first(), span.last());
        }
        double room = madeBefore(factor);
        for (int i = 0; i < season.season().rigs().size(); i++) {
            Rig rig = rig(i);
            double hours = time.rigS(i, Math.max(0, from - rig.batchTimeS()), Math.max(0, until));
            double fastest = 0;
            for (int r = 0; r < recipes; r++) {
                fastest = Math.max(fastest, factor[r] / secondsPerDm2(rig, r, withWater));
            }
            room += (hours + missingS(rig, withWater)) * fastest;
        }
        relaxation.addAtMost(planted, room * ROUNDING);
    }

    private double madeBefore(double[] factor) {
        double area = 0;
        for (int p = 0; p < season.planterCount(); p++) {
            area += factor[season.tankRecipe(p)] * season.tankDm2(p);
        }
        for (int r = 0; r < season.season().rigs().size(); r++) {
            area += factor[season.rigMixRecipe(r)] * season.rigMixDm2(r);
        }
        return area;
    }

    private double secondsPerDm2(Rig rig, int recipe, boolean withWater) {
        double mixL = loads.mixLPerDm2(recipe);
        double largest = 0;
        for (int p = 0; p < season.planterCount(); p++) {
            largest = Math.max(largest, loads.dm2(p, recipe));
        }
        double seconds = loads.compostMgPerDm2(recipe)
                        / MG_PER_KG
                        / (rig.batchCompostKg() + GRAM_KG)
                        * (rig.batchTimeS() + rig.cleanTimeS())
                + mixL / rig.transferLPerS()
                + shortestSetupS / largest;
        return withWater
                ? seconds
                        + loads.drawnShare(rig, recipe)
                                * mixL
                                * (1 / highestLPerS + (shortestTreatmentS + 2 * shortestWayS(rig)) / rig.nurseTankL())
                : seconds;
    }

    private double missingS(Rig rig, boolean withWater) {
        double seconds = rig.cleanTimeS();
        return withWater
                ? seconds + rig.nurseTankL() / highestLPerS + shortestTreatmentS + 3 * shortestWayS(rig)
                : seconds;
    }

    private double shortestWayS(Rig rig) {
        return shortestWayM / rig.roadSpeedMPerS();
    }

    private double rate(int recipe, boolean withWater) {
        double rate = 0;
        for (Rig rig : season.season().rigs()) {
            rate += 1 / secondsPerDm2(rig, recipe, withWater);
        }
        return rate;
    }

    private Rig rig(int i) {
        return season.season().rigs().get(i);
    }
}

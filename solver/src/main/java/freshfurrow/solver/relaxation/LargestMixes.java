package freshfurrow.solver.relaxation;

import static freshfurrow.model.quantity.Factors.DM2_PER_M2;
import static freshfurrow.model.quantity.Factors.MG_PER_KG;

import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import java.util.stream.IntStream;

/**
 * How much area a mix can serve at the most that a rig makes at the water point for several fills.
 *
 * <p>Proof. Such a mix is only as large as the planter that asks for it could plant, out of fills by that rig one after the other, before the hold time of
 * its oldest batch, less the reserve, is over; others may be filled from it then, but it does not grow. So within that time, one after the other,
 * lie all its batches but the oldest with a clean before each, the drive from a water point to a field, a setup for each load, of which none is larger
 * than {@link LargestLoads}, the pumping, and the planting of all of it. Each of these takes no less for a larger mix, so that the
 * largest area for which they fit is found by halving. Where a plan begins in the middle of a season, the drive is left out: a planter may stand anywhere.
 */
public final class LargestMixes {
    private static final double EASED = 1 - 1e-9;
    /** What the batches of a mix may hold more than full ones, and what a mix may lack, kg. */
    private static final double GRAMS_KG = 0.012;

    private static final int HALVINGS = 60;

    private final CompiledSeason season;
    private final LargestLoads loads;
    private final double shortestWayM;

    public LargestMixes(CompiledSeason compiled) {
        season = compiled;
        loads = new LargestLoads(compiled);
        shortestWayM = compiled.season().standing().isPresent() ? 0 : shortestWayM(compiled.season());
    }

    /** Of a mix of a recipe by a rig that makes batches at the water, dm2, if its tank and water allow {@code mostDm2}. */
    public double dm2(int rig, int recipe, double mostDm2) {
        return Math.min(
                mostDm2,
                IntStream.range(0, season.planterCount())
                        .filter(planter -> mayAsk(planter, rig, recipe))
                        .mapToDouble(planter -> withinHold(planter, rig, recipe, mostDm2))
                        .max()
                        .orElse(mostDm2));
    }

    private boolean mayAsk(int planter, int rig, int recipe) {
        return applicator(planter).on().stream().allMatch(rig(rig).id()::equals)
                && IntStream.range(0, season.fieldCount())
                        .anyMatch(field -> season.recipeIndex(field) == recipe && season.allows(planter, field));
    }

    private double withinHold(int planter, int rig, int recipe, double mostDm2) {
        double holdS = season.season().recipes().get(recipe).holdS()
                - season.season().recipes().get(recipe).reserveS();
        if (takesS(planter, rig, recipe, mostDm2) <= holdS) {
            return mostDm2;
        }
        double fits = 0;
        double tooLarge = mostDm2;
        for (int step = 0; step < HALVINGS; step++) {
            double middle = (fits + tooLarge) / 2;
            if (takesS(planter, rig, recipe, middle) <= holdS) {
                fits = middle;
            } else {
                tooLarge = middle;
            }
        }
        return tooLarge;
    }

    /** From the end of the oldest batch to the last drop, at the least. */
    private double takesS(int planter, int rig, int recipe, double dm2) {
        Applicator applicator = applicator(planter);
        double pumpS = applicator.on().isPresent() ? 0 : dm2 * loads.mixLPerDm2(recipe) / rig(rig).transferLPerS();
        double setups = Math.max(1, Math.ceil(dm2 / loads.dm2(planter, recipe) - 1e-9));
        double plantingS = dm2 / (applicator.fieldCapacityM2PerS() * DM2_PER_M2);
        return EASED
                * (laterBatchesS(rig(rig), recipe, dm2)
                        + shortestWayM / rig(rig).roadSpeedMPerS()
                        + setups * applicator.fillSetupS()
                        + pumpS
                        + plantingS);
    }

    private double laterBatchesS(Rig rig, int recipe, double dm2) {
        double kg = Math.max(
                0,
                loads.leastShareOfCompost() * LargestLoads.LEAST_SHARE * loads.compostMgPerDm2(recipe) * dm2 / MG_PER_KG
                        - GRAMS_KG);
        double full = kg / rig.batchCompostKg();
        double batches = Math.max(1, Math.ceil(full - 1e-9));
        double batchS = Math.max(rig.leastBatchTimeS(), full / batches * rig.batchTimeS());
        return (batches - 1) * (batchS + rig.cleanTimeS());
    }

    private static double shortestWayM(Season season) {
        return season.waterPoints().stream()
                .flatMapToDouble(
                        point -> season.fields().stream().map(Field::id).mapToDouble(field -> season.distances()
                                .metres(point.id(), field)))
                .min()
                .orElse(0);
    }

    private Applicator applicator(int planter) {
        return season.season().applicators().get(planter);
    }

    private Rig rig(int rig) {
        return season.season().rigs().get(rig);
    }
}

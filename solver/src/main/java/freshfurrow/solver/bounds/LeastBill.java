package freshfurrow.solver.bounds;

import static freshfurrow.model.quantity.Factors.DM2_PER_HA;
import static freshfurrow.model.quantity.Factors.HOUR_S;
import static freshfurrow.model.quantity.Factors.M2_PER_HA;
import static freshfurrow.model.quantity.Factors.MG_PER_KG;

import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.CostItem;
import freshfurrow.model.season.Costs;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.relaxation.FieldGroups;
import freshfurrow.solver.relaxation.LargestLoads;
import java.util.stream.IntStream;

/**
 * What no plan of a season costs less than, where plans are judged by money.
 *
 * <p>Proof. Each part of a field is planted with extract, or without, or not at all. What is planted takes the time that the fastest of its
 * planters needs at its field capacity: planting lies between the first and the last deed of a day, so that it counts as hours at
 * work, or it is overtime, of which a planter has so much a day at the most. So either each hour counts as the cheaper of the two, or all as hours at
 * work, and what all overtime there can be costs less than those comes off. With extract it takes its compost, all but the {@link LargestLoads#leastShareOfCompost} and a thousandth,
 * and all but what a load may lack that uses a lot up, unless the mix for it was made before the plan begins. So a part of a field
 * costs its least at the least, and one that is not planted what unplanted area costs. All else that costs anything comes on top.
 */
public final class LeastBill {
    /** A load that uses a lot up may lack ten grams, rounded to the gram. */
    private static final double LACKING_KG = 0.011;

    /** So much of a sum its rounding may make. */
    private static final double NOISE = 1e-9;

    private final CompiledSeason season;
    private final Costs prices;
    private final LargestLoads largest;
    private final boolean overtimeComesOff;

    public LeastBill(CompiledSeason season, Costs prices) {
        this.season = season;
        this.prices = prices;
        largest = new LargestLoads(season);
        overtimeComesOff = sum(true) - cheaperOvertime() > sum(false);
    }

    /** What all fields cost, whether they are planted or not, 0 or more. */
    double ofAllFields() {
        double sum = sum(overtimeComesOff) - (overtimeComesOff ? cheaperOvertime() : 0);
        return Math.max(0, (sum - madeBefore() - lacking()) * (1 - NOISE));
    }

    private double sum(boolean allAtWork) {
        double sum = 0;
        for (int field = 0; field < season.fieldCount(); field++) {
            sum += season.areaDm2(field) / DM2_PER_HA * perHa(field, allAtWork);
        }
        return sum;
    }

    /** By what all overtime that there can be costs less than as many hours at work. */
    private double cheaperOvertime() {
        double less = Math.max(0, prices.price(CostItem.WORK) - prices.price(CostItem.OVERTIME));
        double overtimeH = season.season().applicators().stream()
                .mapToDouble(machine -> (double) machine.overtimeS() / HOUR_S)
                .sum();
        return less * overtimeH * season.season().days();
    }

    /** What a hectare that is not planted costs beyond what {@link #ofAllFields} counts for it, at the least, 0 or more. */
    double morePerHaUnplanted() {
        double most = IntStream.range(0, season.fieldCount())
                .filter(field -> !FieldGroups.planters(season, field).isEmpty())
                .mapToDouble(field -> perHa(field, overtimeComesOff))
                .max()
                .orElse(0);
        return Math.max(0, (prices.price(CostItem.UNPLANTED) - most) * (1 - NOISE));
    }

    /** Of a hectare of a field, whatever becomes of it. */
    private double perHa(int field, boolean allAtWork) {
        return Math.min(prices.price(CostItem.UNPLANTED), plantedPerHa(field, allAtWork));
    }

    /** Of a hectare that is planted, with or without extract; infinite where no planter may plant it. */
    public double plantedPerHa(int field) {
        return plantedPerHa(field, false);
    }

    private double plantedPerHa(int field, boolean allAtWork) {
        double work = FieldGroups.planters(season, field).stream()
                .mapToDouble(planter -> workPerHa(planter, allAtWork))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
        double compost = compostPerHa(field);
        return work + (season.mayGoWithout(field) ? Math.min(compost, prices.price(CostItem.UNTREATED)) : compost);
    }

    private double workPerHa(int planter, boolean allAtWork) {
        Applicator machine = season.season().applicators().get(planter);
        double perH = prices.price(CostItem.WORK);
        if (machine.overtimeS() > 0 && !allAtWork) {
            perH = Math.min(perH, prices.price(CostItem.OVERTIME));
        }
        return perH * M2_PER_HA / machine.fieldCapacityM2PerS() / HOUR_S;
    }

    private double compostPerHa(int field) {
        double mgPerDm2 = largest.compostMgPerDm2(season.recipeIndex(field));
        return prices.price(CostItem.COMPOST)
                * mgPerDm2
                * DM2_PER_HA
                / MG_PER_KG
                * largest.leastShareOfCompost()
                * LargestLoads.LEAST_SHARE;
    }

    private double madeBefore() {
        double dm2 = 0;
        for (int planter = 0; planter < season.planterCount(); planter++) {
            dm2 += season.tankDm2(planter);
        }
        for (int rig = 0; rig < season.season().rigs().size(); rig++) {
            dm2 += season.rigMixDm2(rig);
        }
        double mostPerHa = IntStream.range(0, season.fieldCount())
                .mapToDouble(this::compostPerHa)
                .max()
                .orElse(0);
        return dm2 / DM2_PER_HA * mostPerHa;
    }

    private double lacking() {
        int times = season.season().compost().size() * largest.timesUsedUp();
        return times * LACKING_KG * prices.price(CostItem.COMPOST);
    }
}

package freshfurrow.solver.bounds;

import static freshfurrow.model.quantity.Factors.DM2_PER_HA;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.CostItem;
import freshfurrow.model.season.Costs;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.linear.ProvenBound;
import freshfurrow.solver.relaxation.Aim;
import freshfurrow.solver.relaxation.FieldGroup;
import freshfurrow.solver.relaxation.FieldGroups;
import freshfurrow.solver.relaxation.FillProgram;
import freshfurrow.solver.relaxation.OvertimeAsHours;
import freshfurrow.solver.relaxation.Relaxation;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;

/**
 * What no plan of a season can do better. The figures come from {@link FewestRefills}, from a {@link Relaxation} of the season and from {@link LeastEffort};
 * each stands by itself, so that there need not be a plan that reaches all of them at once.
 */
public final class SeasonBounds {
    private static final BigDecimal EXACT_DM2_PER_HA = new BigDecimal(DM2_PER_HA);
    private static final int AREA_DECIMALS = 6;
    private static final int HUNDREDTHS = 100;
    private static final int MILLIONTHS = 1_000_000;
    private static final double WEIGHT_ONE = 1000;

    /** So that rounding of sums never asks for one more fill. */
    private static final double FILL_NOISE = 1e-5;

    /** So much of a hundredth of a ha-day the score may lose when it adds. */
    private static final BigDecimal SCORE_NOISE = new BigDecimal("0.000001");

    private final CompiledSeason season;
    private final List<FieldGroup> groups;
    private final FewestRefills refills;
    private final FillProgram fillProgram;
    private final LeastEffort effort;
    private final long forbiddenDm2;
    private final long placeableDm2;
    private final long medium;

    private SeasonBounds(CompiledSeason whole) {
        season = OvertimeAsHours.of(whole);
        groups = FieldGroups.of(season);
        refills = new FewestRefills(season);
        fillProgram = new FillProgram(season, groups);
        effort = new LeastEffort(season, groups, fillProgram);
        placeableDm2 = groups.stream().mapToLong(FieldGroup::area).sum();
        long area = 0;
        for (int f = 0; f < season.fieldCount(); f++) {
            area += season.areaDm2(f);
        }
        forbiddenDm2 = area - placeableDm2;
        Optional<Costs> prices = season.season().goals().byMoney();
        medium = prices.isPresent() ? leastBill(whole, prices.get()) : leastLateness();
    }

    /** Rounded up as the score is, and negated. */
    private long leastLateness() {
        double untreatedDays = season.season().goals().untreatedDays().orElse(0);
        return -least(Aim.score(LeavingOut.costPerHa(season) / HUNDREDTHS, untreatedDays), forbiddenDm2)
                .multiply(BigDecimal.valueOf(HUNDREDTHS))
                .divide(EXACT_DM2_PER_HA)
                .subtract(SCORE_NOISE)
                .setScale(0, RoundingMode.CEILING)
                .max(BigDecimal.ZERO)
                .longValueExact();
    }

    /** What is late and unplanted beside what all fields cost anyway, in millionths, negated. */
    private long leastBill(CompiledSeason whole, Costs prices) {
        LeastBill bill = new LeastBill(whole, prices);
        double late = prices.price(CostItem.LATE);
        double unplanted = bill.morePerHaUnplanted();
        BigDecimal harm = late > 0 && unplanted > 0 ? least(Aim.bill(unplanted, late), 0) : BigDecimal.ZERO;
        return -new BigDecimal(bill.ofAllFields())
                .add(harm.divide(EXACT_DM2_PER_HA))
                .multiply(BigDecimal.valueOf(MILLIONTHS))
                .setScale(0, RoundingMode.FLOOR)
                .longValueExact();
    }

    /** Works out what does not depend on a plan; takes up to a few seconds for seasons of hundreds of fields. */
    public static SeasonBounds of(CompiledSeason season) {
        return new SeasonBounds(season);
    }

    /** The bounds to stand beside a plan of the season, of which it is not known whether it is the best. */
    public Plan.Bounds forPlan(Plan plan) {
        return bounds(plan, false);
    }

    /** The bounds to stand beside the best plan of the season. */
    public Plan.Bounds forBestPlan(Plan plan) {
        return bounds(plan, true);
    }

    /**
     * The fewest fills of any plan that plants none without extract.
     *
     * @param unservedDm2 what such plans leave at the most, dm2
     */
    public int leastFills(long unservedDm2) {
        return refills.fills((double) Math.max(0, unservedDm2 - forbiddenDm2));
    }

    private Plan.Bounds bounds(Plan plan, boolean provedBest) {
        long unservedDm2 = Math.round(plan.totals().unservedHa() * DM2_PER_HA);
        long unplantedDm2 = Math.max(0, unservedDm2 - forbiddenDm2);
        double untreatedDm2 = Math.ceil(plan.totals().untreatedHa() * DM2_PER_HA);
        FillProgram.NoWorse than = noWorse(plan, unplantedDm2 + untreatedDm2);
        int fills = fills(than);
        int waterTrips = refills.waterTrips(than.leftDm2());
        return new Plan.Bounds(
                fills,
                waterTrips,
                unplantedDm2 == 0 ? forbiddenDm2 / DM2_PER_HA : hectares(least(Aim.unserved(), forbiddenDm2)),
                lateHaDays(plan, unplantedDm2),
                provedBest ? plan.score().medium() : medium,
                provedBest
                        ? -plan.score().soft()
                        : effort.minutes(new LeastEffort.Known(
                                than, (double) unplantedDm2, refills.onBoardDm2(), fills, waterTrips)),
                provedBest);
    }

    private int fills(FillProgram.NoWorse than) {
        double least = fillProgram.least(than, 1, 0);
        return Math.max(refills.fills(than.leftDm2()), (int) Math.ceil(least - FILL_NOISE));
    }

    private FillProgram.NoWorse noWorse(Plan plan, double leftDm2) {
        if (season.season().goals().byMoney().isPresent()) {
            return new FillProgram.NoWorse(leftDm2, Double.POSITIVE_INFINITY, 0);
        }
        double haDaysPerHa = LeavingOut.costPerHa(season) / HUNDREDTHS;
        double mostHarmDm2Days = (-plan.score().medium() + 1e-3) / HUNDREDTHS * DM2_PER_HA - haDaysPerHa * forbiddenDm2;
        return new FillProgram.NoWorse(leftDm2, mostHarmDm2Days, harmPerLeftDm2(haDaysPerHa));
    }

    /** What a dm2 left unplanted or without extract weighs at the least, dm2-days. */
    private double harmPerLeftDm2(double haDaysPerHa) {
        if (!season.mayGoWithout()) {
            return haDaysPerHa;
        }
        double leastExtractWeight =
                groups.stream().mapToDouble(FieldGroup::extractWeight).min().orElse(0) / WEIGHT_ONE;
        return Math.min(haDaysPerHa, season.season().goals().untreatedDays().orElse(0) * leastExtractWeight);
    }

    /** Where the eased season can be planted without any lateness that counts, there is nothing to prove. */
    private double lateHaDays(Plan plan, long unplantedDm2) {
        boolean noneCounts = season.season().goals().byMoney().isEmpty() && medium == 0;
        return plan.totals().lateHaDays() == 0 || noneCounts ? 0 : hectares(least(Aim.late((double) unplantedDm2), 0));
    }

    private static double hectares(BigDecimal dm2) {
        return dm2.divide(EXACT_DM2_PER_HA)
                .setScale(AREA_DECIMALS, RoundingMode.FLOOR)
                .doubleValue();
    }

    /** What the aim comes to at the least, in its unit, 0 or more. */
    private BigDecimal least(Aim aim, long unservedAnywayDm2) {
        BigDecimal unserved =
                new BigDecimal(aim.costOfUnserved()).multiply(BigDecimal.valueOf(placeableDm2 + unservedAnywayDm2));
        return ProvenBound.of(Relaxation.of(season, groups, aim).program())
                .add(unserved)
                .max(BigDecimal.ZERO);
    }
}

package freshfurrow.model.audit;

import static freshfurrow.model.quantity.Factors.MINUTE_S;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Costs;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Goals;
import java.time.LocalDateTime;
import java.util.Comparator;

/** Whether the plan's totals and score are what its activities, loads and batches come to. */
final class Totals {
    /** Weights are counted in thousandths, so each may be off by half of one. */
    private static final double WEIGHT_ROUNDING = 0.000_5;

    private static final double HUNDREDTHS = 100;
    private static final double MILLIONTHS = 1e6;
    /** Half a tenth, and a little for sums. */
    private static final double MINUTE_ROUNDING = 0.051;

    private final Evidence evidence;
    private final Plan plan;
    private final PlanTally tally;
    private final DaysOfMachines days;
    private final double idleMin;
    private final Prices prices;

    Totals(Evidence evidence) {
        this.evidence = evidence;
        plan = evidence.plan;
        tally = new PlanTally(evidence);
        days = new DaysOfMachines(evidence);
        idleMin = new IdleTime(evidence).minutes();
        prices = new Prices(evidence, tally, compostKg());
    }

    void check() {
        totals(plan.totals());
        prices.check();
        score(plan.score());
    }

    private void totals(Plan.Totals totals) {
        double manyRoundings = (evidence.activities.size() + plan.loads().size() + 1) * Evidence.ROUNDING;
        same("areaHa", totals.areaHa(), tally.plantedHa(), Evidence.AREA_ROUNDING_HA);
        same("untreatedHa", totals.untreatedHa(), tally.untreatedHa(), Evidence.AREA_ROUNDING_HA);
        same("unservedHa", totals.unservedHa(), tally.unservedHa, Evidence.AREA_ROUNDING_HA);
        same("lateHaDays", totals.lateHaDays(), tally.lateHaDays(), Evidence.AREA_ROUNDING_HA);
        same("planterFills", totals.planterFills(), tally.fills, 0);
        same("waterTrips", totals.waterTrips(), tally.draws, 0);
        same("compostTrips", totals.compostTrips(), tally.compostLoadings, 0);
        same("batches", totals.batches(), tally.extractions, 0);
        same("compostKg", totals.compostKg(), compostKg(), manyRoundings);
        same("dumpedL", totals.dumpedL(), tally.dumpedL, manyRoundings);
        same("waitMin", totals.waitMin(), tally.waitMin, MINUTE_ROUNDING);
        same("idleMin", totals.idleMin(), idleMin, MINUTE_ROUNDING);
        same("overtimeMin", totals.overtimeMin(), new Overtime(evidence).minutes(), MINUTE_ROUNDING);
        same("driveKm", totals.driveKm(), tally.driveKm, manyRoundings);
        same("smallestMarginMin", totals.smallestMarginMin(), smallestMarginMin(), MINUTE_ROUNDING);
        if (!totals.finish().equals(finish())) {
            evidence.report(Rule.TOTALS, "finish", "it says " + totals.finish() + ", planting ends at " + finish());
        }
    }

    private double compostKg() {
        return plan.batches().stream()
                .filter(batch -> !evidence.carried.isBatch(batch.id()))
                .mapToDouble(Plan.Batch::compostKg)
                .sum();
    }

    private double smallestMarginMin() {
        return plan.loads().stream()
                .filter(load -> load.appliedL() > 0)
                .mapToDouble(load -> (double) evidence.calendar.passed(load.lastDrop(), load.deadline()) / MINUTE_S)
                .min()
                .orElse(0);
    }

    private LocalDateTime finish() {
        return evidence.all(Activity.Planting.class).stream()
                .map(done -> done.activity().end())
                .max(Comparator.naturalOrder())
                .orElse(evidence.carried.now().orElse(evidence.season.start()));
    }

    private void score(Plan.Score score) {
        long hard = -tally.brokenPromises();
        if (score.hard() != hard) {
            evidence.report(
                    Rule.SCORE,
                    "hard",
                    "it is " + score.hard() + ", fields that are not started on their fixed day make " + hard);
        }
        evidence.season.goals().byMoney().ifPresentOrElse(costs -> bill(score, costs), () -> lateness(score));
        double soft = -softMinutes(evidence.season.goals());
        if (!Evidence.same((double) score.soft(), soft, 1)) {
            evidence.report(
                    Rule.SCORE,
                    "soft",
                    "it is " + score.soft() + ", the plan's effort adds up to " + Evidence.show(soft));
        }
    }

    private void bill(Plan.Score score, Costs costs) {
        double medium = -MILLIONTHS * prices.sum(costs);
        if (!Evidence.same((double) score.medium(), medium, 1 + MILLIONTHS * prices.tolerance(costs))) {
            evidence.report(
                    Rule.SCORE,
                    "medium",
                    "it is " + score.medium() + ", by money the plan comes to " + Evidence.show(medium));
        }
    }

    private void lateness(Plan.Score score) {
        double largestWeight =
                evidence.season.fields().stream().mapToDouble(Field::lateWeight).reduce(1, Math::max);
        double untreatedDays = evidence.season.goals().untreatedDays().orElse(0);
        double largestExtractWeight = evidence.season.fields().stream()
                .mapToDouble(Field::extractWeight)
                .reduce(0, Math::max);
        double unservedHaDays = tally.unservedHa
                * ((evidence.season.days() + 1) * largestWeight + untreatedDays * largestExtractWeight);
        double untreatedHaDays = tally.weightedUntreatedHa() * untreatedDays;
        double medium = -HUNDREDTHS * (tally.weightedLateHaDays() + untreatedHaDays + unservedHaDays);
        double mediumTolerance = 1
                + HUNDREDTHS
                        * WEIGHT_ROUNDING
                        * (tally.lateHaDays() + tally.untreatedHa() * untreatedDays + tally.unservedHa * untreatedDays);
        if (!Evidence.same((double) score.medium(), medium, mediumTolerance)) {
            evidence.report(
                    Rule.SCORE,
                    "medium",
                    "it is " + score.medium() + ", late, untreated and unplanted areas add up to "
                            + Evidence.show(medium));
        }
    }

    private double softMinutes(Goals goals) {
        return tally.fills * goals.refillMin()
                + tally.draws * goals.waterTripMin()
                + tally.compostLoadings * goals.compostTripMin()
                + tally.waitMin * goals.waitMinPerMin()
                + idleMin * goals.idleMinPerMin()
                + tally.driveMin * goals.driveMinPerMin()
                + tally.dumpedKg * goals.dumpMinPerKg()
                + tally.movedFields() * goals.movedMin()
                + days.scraps() * goals.scrapMin()
                + days.callOuts() * goals.callOutMin()
                + new Overtime(evidence).minutes() * goals.overtimeMinPerMin()
                + tally.haDaysSinceStart() * goals.earlyMinPerHaDay();
    }

    private void same(String total, double stated, double found, double tolerance) {
        if (!Evidence.same(stated, found, tolerance)) {
            evidence.report(
                    Rule.TOTALS,
                    total,
                    "it says " + Evidence.show(stated) + ", activities and records add up to " + Evidence.show(found));
        }
    }
}

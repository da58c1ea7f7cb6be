package freshfurrow.solver.estimate;

import static freshfurrow.model.quantity.Factors.DAY_S;
import static freshfurrow.model.quantity.Factors.DM2_PER_HA;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.ActivityVisitor;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.plan.WaitReason;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;

/**
 * How long planters of a plan stood for what they planted: waiting for rig, water and compost, taking loads, and at the end of a
 * day for which no load was worth while. Lists that differ a little from the plan's may expect the same. Planters stand longer on
 * days on which many want the same rig, and hardly plant on those without compost.
 */
public final class Stops {
    /** So much area of an average day is counted in with that of each day and planter, lest a few loads tell of a day, dm2. */
    private static final double AVERAGE_DM2 = 5 * DM2_PER_HA;

    /** Of what is known, when a plan more is. */
    private static final double KEPT = 0.5;

    private final CompiledSeason season;
    private final double[][] standingS;
    private final double[][] plantedDm2;
    private final double[] fills;

    /** Nothing known yet. */
    public Stops(CompiledSeason season) {
        this.season = season;
        standingS = new double[season.planterCount()][season.days()];
        plantedDm2 = new double[season.planterCount()][season.days()];
        fills = new double[season.planterCount()];
    }

    /**
     * Plays lists out and counts in what came of them; what was known before counts half of what it did.
     *
     * @param orders of the season's fields
     */
    public Plan learn(PlantingOrders orders) {
        Plan plan = PlanRecorder.record(season, orders, Plan.SeasonSource.of(season.season(), "", ""));
        learn(plan);
        return plan;
    }

    /** The same of lists that have been played out. */
    void learn(Plan plan) {
        List<Plan.PlanterPlan> planters = new ArrayList<>(plan.planters().values());
        for (int planter = 0; planter < planters.size(); planter++) {
            fills[planter] *= KEPT;
            for (int day = 0; day < season.days(); day++) {
                standingS[planter][day] *= KEPT;
                plantedDm2[planter][day] *= KEPT;
            }
            Count count = new Count(planter);
            planters.get(planter).activities().forEach(activity -> activity.accept(count));
        }
    }

    /** Counts in what one planter does. */
    private final class Count implements ActivityVisitor.OfPlanter<Count> {
        private final int planter;

        Count(int planter) {
            this.planter = planter;
        }

        @Override
        public Count visit(Activity.Move move) {
            return this;
        }

        @Override
        public Count visit(Activity.Wait wait) {
            return wait.why() == WaitReason.WET || wait.why() == WaitReason.WINDOW ? this : standing(wait);
        }

        @Override
        public Count visit(Activity.Fill fill) {
            fills[planter]++;
            return standing(fill);
        }

        @Override
        public Count visit(Activity.Plant plant) {
            plantedDm2[planter][seconds(season.season(), plant.start()) / DAY_S] += plant.areaHa() * DM2_PER_HA;
            return this;
        }

        @Override
        public Count visit(Activity.PlantWithout planting) {
            return this;
        }

        @Override
        public Count visit(Activity.Flush flush) {
            return standing(flush);
        }

        private Count standing(Activity activity) {
            stand(planter, seconds(season.season(), activity.start()), seconds(season.season(), activity.end()));
            return this;
        }
    }

    private void stand(int planter, int fromS, int untilS) {
        for (int day = fromS / DAY_S; day < season.days() && day * DAY_S < untilS; day++) {
            standingS[planter][day] +=
                    season.workS(planter, Math.max(fromS, day * DAY_S), Math.min(untilS, (day + 1) * DAY_S));
        }
    }

    private static int seconds(Season season, LocalDateTime time) {
        return (int) season.time().seconds(time);
    }

    /** Seconds for each dm2, by planter and day. */
    double[][] perDm2S() {
        int planters = standingS.length;
        int days = standingS[0].length;
        double average = sum(standingS) / Math.max(1, sum(plantedDm2));
        double[][] perDm2S = new double[planters][days];
        for (int planter = 0; planter < planters; planter++) {
            double own = mean(average, sum(standingS[planter]), sum(plantedDm2[planter]));
            for (int day = 0; day < days; day++) {
                double onDay = mean(average, sumOfDay(standingS, day), sumOfDay(plantedDm2, day));
                perDm2S[planter][day] = average == 0 ? 0 : own * onDay / average;
            }
        }
        return perDm2S;
    }

    private static double mean(double average, double standing, double dm2) {
        return (standing + average * AVERAGE_DM2) / (dm2 + AVERAGE_DM2);
    }

    /** Seconds for a fill, by planter. */
    double[] perFillS() {
        double[] perFillS = new double[fills.length];
        for (int planter = 0; planter < fills.length; planter++) {
            perFillS[planter] = sum(standingS[planter]) / Math.max(1, fills[planter]);
        }
        return perFillS;
    }

    private static double sum(double[][] values) {
        double sum = 0;
        for (double[] row : values) {
            sum += sum(row);
        }
        return sum;
    }

    private static double sum(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }

    private static double sumOfDay(double[][] values, int day) {
        double sum = 0;
        for (double[] planter : values) {
            sum += planter[day];
        }
        return sum;
    }
}

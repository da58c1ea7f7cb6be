package freshfurrow.solver.lived;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WaterPoint;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What one spring used, by day of the season. */
public final class SpringUse {
    private final double[] compostKg;
    private final double[][] waterL;

    /**
     * Use by day.
     *
     * @param compostKg compost of the batches begun on each day, kg
     * @param waterL water drawn on each day, by water point in the season's order, L
     */
    public SpringUse(double[] compostKg, double[][] waterL) {
        this.compostKg = compostKg.clone();
        this.waterL = Arrays.stream(waterL).map(double[]::clone).toArray(double[][]::new);
    }

    /** Compost of the batches begun on a day counted from the season's first, kg. */
    public double compostKg(int day) {
        return compostKg[day];
    }

    /** Water drawn on a day at a water point, by its place in the season's order, L. */
    public double waterL(int point, int day) {
        return waterL[point][day];
    }

    static SpringUse of(Season season, LivedSpring lived) {
        double[] compostKg = new double[season.days()];
        double[][] waterL = new double[season.waterPoints().size()][season.days()];
        List<String> points = season.waterPoints().stream().map(WaterPoint::id).toList();
        for (LivedSpring.Part part : lived.parts()) {
            Map<String, Double> massOf = new HashMap<>();
            part.plan().batches().forEach(batch -> massOf.put(batch.id(), batch.compostKg()));
            for (Plan.RigPlan rig : part.plan().rigs().values()) {
                for (Activity activity : rig.activities()) {
                    int s = (int) ChronoUnit.SECONDS.between(season.first().atStartOfDay(), activity.start());
                    if (s >= part.untilS()) {
                        continue;
                    }
                    int day = s / GroundDays.DAY_S;
                    if (activity instanceof Activity.Extract extract) {
                        compostKg[day] += massOf.getOrDefault(extract.batch(), 0.0);
                    } else if (activity instanceof Activity.Draw draw) {
                        waterL[points.indexOf(draw.at())][day] += draw.litres();
                    }
                }
            }
        }
        return new SpringUse(compostKg, waterL);
    }
}

package freshfurrow.solver.lived;

import static freshfurrow.model.quantity.Factors.DAY_S;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WaterPoint;
import freshfurrow.model.supply.SpringUse;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Counts what a spring that was lived used. */
final class UseOfSpring {
    private UseOfSpring() {}

    static SpringUse of(Season season, LivedSpring lived) {
        double[] compostKg = new double[season.days()];
        double[][] waterL = new double[season.waterPoints().size()][season.days()];
        List<String> points = season.waterPoints().stream().map(WaterPoint::id).toList();
        for (LivedSpring.Part part : lived.parts()) {
            Map<String, Double> massOf = new HashMap<>();
            part.plan().batches().forEach(batch -> massOf.put(batch.id(), batch.compostKg()));
            for (Plan.RigPlan rig : part.plan().rigs().values()) {
                for (Activity activity : rig.activities()) {
                    int s = (int) season.time().seconds(activity.start());
                    if (s >= part.untilS()) {
                        continue;
                    }
                    int day = s / DAY_S;
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

package freshfurrow.solver.relaxation;

import static freshfurrow.model.quantity.Factors.DAY_S;

import freshfurrow.model.season.Rig;
import freshfurrow.model.season.WaterPoint;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.WorkingTime;

/**
 * What water points give at the most. A point gives no more than its daily limit on each day on which a rig works; and no more than
 * its hoses let through while it is open and any rig works, where each draw takes up a hose for hooking up and treatment too and is no larger
 * than the largest nurse tank.
 */
final class WaterRoom {
    /** The timeline counts whole mL. */
    private static final double ROUNDING_L = 0.001;

    private final CompiledSeason season;
    private final WorkingTime time;
    private final double largestNurseTankL;

    WaterRoom(CompiledSeason season, WorkingTime time) {
        this.season = season;
        this.time = time;
        largestNurseTankL = season.season().rigs().stream()
                .mapToDouble(Rig::nurseTankL)
                .max()
                .orElse(0);
    }

    /** The most that may be drawn of a point from the start of one day to the end of another, L. */
    double litres(int w, int firstDay, int lastDay) {
        WaterPoint point = season.season().waterPoints().get(w);
        double hoseS = (double) point.hoses() * time.drawableS(w, firstDay * DAY_S, (lastDay + 1) * DAY_S);
        double throughHosesL = hoseS / (1 / point.flowLPerS() + point.beforeDrawS() / largestNurseTankL);
        double limitL = point.dailyLimitL().isPresent()
                ? (point.dailyLimitL().getAsDouble() + ROUNDING_L) * daysWithRig(firstDay, lastDay)
                : Double.MAX_VALUE;
        return Math.min(throughHosesL, limitL);
    }

    private int daysWithRig(int firstDay, int lastDay) {
        int days = 0;
        for (int day = firstDay; day <= lastDay; day++) {
            for (int r = 0; r < season.season().rigs().size(); r++) {
                if (time.rigS(r, day * DAY_S, (day + 1) * DAY_S) > 0) {
                    days++;
                    break;
                }
            }
        }
        return days;
    }
}

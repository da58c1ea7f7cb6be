package freshfurrow.solver.relaxation;

import static freshfurrow.model.quantity.Factors.DAY_S;

import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.WorkingTime;

/** Whether a planter may begin a day with a load in its tank. */
final class OvernightLoads {
    private final CompiledSeason season;
    private final WorkingTime time;
    private final int longestHoldS;

    OvernightLoads(CompiledSeason season, WorkingTime time) {
        this.season = season;
        this.time = time;
        longestHoldS = season.season().longestHoldS();
    }

    /** Whether a load filled before a day may still be fresh when the planter's hours of that day begin. */
    boolean mayBeKept(int planter, int day) {
        int dayStart = day * DAY_S;
        if (season.tankDm2(planter) > 0 && dayStart < season.tankDeadlineS(planter)) {
            return true;
        }
        int until = time.planterUntil(planter, dayStart);
        int setupS = season.season().applicators().get(planter).fillSetupS();
        return until >= 0 && time.planterFrom(planter, dayStart) < until - setupS + longestHoldS;
    }
}

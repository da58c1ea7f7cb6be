package freshfurrow.solver.bounds;

import static freshfurrow.model.quantity.Factors.DM2_PER_HA;

import freshfurrow.model.goals.GoalSet;
import freshfurrow.model.timeline.CompiledSeason;

/** What leaving fields out costs a plan at the least. */
final class LeavingOut {
    private static final double ROUNDING = 1e-6;

    private final CompiledSeason season;
    private final double costPerHa;

    LeavingOut(CompiledSeason season) {
        this.season = season;
        costPerHa = costPerHa(season);
    }

    /** What a hectare left unserved costs on the medium level of the score, hundredths of ha-days. */
    static double costPerHa(CompiledSeason season) {
        return GoalSet.of(season.season()).goals().stream()
                .filter(goal -> goal.name().equals("unplanted"))
                .findFirst()
                .orElseThrow()
                .weight();
    }

    /** No plan that leaves out fields of so much area has a better medium score than this. */
    long bestMediumWithout(long leftOutDm2) {
        return -(long) Math.ceil(leftOutDm2 / DM2_PER_HA * costPerHa - ROUNDING);
    }

    /** Area of the smallest field. */
    long smallestDm2() {
        long smallest = Long.MAX_VALUE;
        for (int field = 0; field < season.fieldCount(); field++) {
            smallest = Math.min(smallest, season.areaDm2(field));
        }
        return smallest;
    }
}

package freshfurrow.solver.bounds;

import static freshfurrow.model.quantity.Factors.DM2_PER_HA;

import freshfurrow.model.goals.GoalSet;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.relaxation.FieldGroups;
import java.util.Optional;
import java.util.stream.IntStream;

/** What leaving fields out costs a plan at the least: of a bill, beside what no plan can do without. */
final class LeavingOut {
    private static final double ROUNDING = 1e-6;
    private static final double MILLIONTHS = 1e6;

    private final CompiledSeason season;
    private final double costPerHa;
    private final double costAnyway;
    private final long anywayDm2;

    LeavingOut(CompiledSeason season) {
        this.season = season;
        Optional<LeastBill> bill = season.season().goals().byMoney().map(prices -> new LeastBill(season, prices));
        costPerHa = bill.map(least -> MILLIONTHS * least.morePerHaUnplanted()).orElseGet(() -> costPerHa(season));
        costAnyway = bill.map(least -> MILLIONTHS * least.ofAllFields()).orElse(0.0);
        anywayDm2 = bill.isPresent() ? forbiddenDm2() : 0;
    }

    /** Area of fields that no planter may plant. */
    private long forbiddenDm2() {
        return IntStream.range(0, season.fieldCount())
                .filter(field -> FieldGroups.planters(season, field).isEmpty())
                .mapToLong(season::areaDm2)
                .sum();
    }

    /** What a hectare left unserved costs on the medium level of a score by lateness, hundredths of ha-days. */
    static double costPerHa(CompiledSeason season) {
        return GoalSet.of(season.season()).goals().stream()
                .filter(goal -> goal.name().equals("unplanted"))
                .findFirst()
                .orElseThrow()
                .weight();
    }

    /** No plan that leaves out fields of so much area has a better medium score than this. */
    long bestMediumWithout(long leftOutDm2) {
        double more = Math.max(0, leftOutDm2 - anywayDm2) / DM2_PER_HA * costPerHa;
        return -(long) Math.ceil(costAnyway + more - ROUNDING);
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

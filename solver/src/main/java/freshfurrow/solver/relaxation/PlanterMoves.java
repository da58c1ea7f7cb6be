package freshfurrow.solver.relaxation;

import freshfurrow.model.season.Applicator;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.linear.LinearProgram;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * What planters can plant on several days, as they have to move from field to field.
 *
 * <p>Proof. A field stands in one planter's list, which plants it in whole, or as far as it comes, before it moves on. Of the fields that a planter plants
 * on the days from a to b, it moves to all but the first on these days, and takes at least its time for a move and the drive from
 * the nearest other field or from where it stands to begin with; one that is mounted on a rig may come with that, and takes none. These moves lie in its hours; and since between two of them something is planted,
 * at most one lies between the last moment of a day at which anything may be planted and the next such moment. So with the time(p) that it has on each
 * day by {@link PlanterRoom}, and seconds(p, r) and factors as there,
 *
 * <p>sum of w(r) x area(r) + sum over its fields of the move's cost &lt;= sum over days of time(p) x the largest w(r) / seconds(p, r) + the largest
 * cost x (1 + days before b after whose last such moment it still works),
 *
 * <p>where the cost of a move is its time x that largest quotient, of all planters the least, and is spread evenly over the field: see {@link FieldCosts}.
 */
final class PlanterMoves {
    private static final double[] SHARES = {0.5, 1};
    private static final double ROUNDING = 1 + 1e-9;

    private final CompiledSeason season;
    private final Relaxation relaxation;
    private final PlanterRoom room;
    /** By field, in the unit of the rows. */
    private final double[] ofMove;

    PlanterMoves(CompiledSeason season, Relaxation relaxation, PlanterRoom room) {
        this.season = season;
        this.relaxation = relaxation;
        this.room = room;
        ofMove = IntStream.range(0, season.fieldCount())
                .mapToDouble(this::ofMove)
                .toArray();
    }

    void addRows() {
        double[] perDm2 = IntStream.range(0, ofMove.length)
                .mapToDouble(field -> ofMove[field] / season.areaDm2(field))
                .toArray();
        double[] ofDay =
                IntStream.range(0, relaxation.days()).mapToDouble(room::ofDay).toArray();
        int[] workingAfterPlanting = IntStream.range(0, relaxation.days())
                .map(room::workingAfterPlanting)
                .toArray();
        for (double share : SHARES) {
            double most = Ranked.within(perDm2, share);
            FieldCosts costs = new FieldCosts(
                    season,
                    Arrays.stream(perDm2).map(cost -> Math.min(cost, most)).toArray());
            for (DaySpans.Span span : DaySpans.ofSeveralDays(relaxation.firstDay(), relaxation.days())) {
                addRow(span, costs, ofDay, workingAfterPlanting);
            }
        }
    }

    private void addRow(DaySpans.Span span, FieldCosts costs, double[] ofDay, int[] workingAfterPlanting) {
        LinearProgram.Sum planted = new LinearProgram.Sum();
        double most = 0;
        for (int g = 0; g < relaxation.groups().size(); g++) {
            most += costs.addPlanted(
                    relaxation,
                    planted,
                    room.factor(relaxation.groups().get(g).recipe()),
                    room.factorWithout(),
                    g,
                    span);
        }
        double largest = costs.largestOfField();
        for (int day = span.first(); day <= span.last(); day++) {
            most += ofDay[day];
            if (day < span.last()) {
                most += largest * workingAfterPlanting[day];
            }
        }
        relaxation.addAtMost(planted, (most + largest * season.planterCount()) * ROUNDING);
    }

    private double ofMove(int field) {
        int fromOther = IntStream.range(0, season.fieldCount())
                .filter(from -> from != field)
                .map(from -> season.metresBetweenFields(from, field))
                .min()
                .orElse(Integer.MAX_VALUE);
        double least = Double.MAX_VALUE;
        for (int p = 0; p < season.planterCount(); p++) {
            if (season.season().applicators().get(p).on().isPresent()) {
                return 0;
            }
            int metres = Math.min(fromOther, season.metresFromStart(p, field));
            Applicator planter = season.season().applicators().get(p);
            least = Math.min(least, (planter.moveTimeS() + metres / planter.roadSpeedMPerS()) * room.dm2PerS(p));
        }
        return least;
    }
}

package freshfurrow.solver.relaxation;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.GoingOnTest;
import freshfurrow.solver.example.RandomPlans;
import freshfurrow.solver.linear.LinearProgram;
import java.time.temporal.ChronoUnit;
import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** No season played out breaks a row of its relaxation. */
class RowsTest {
    private static final int MOST_FIELDS = 20;
    private static final double DM2_PER_HA = 1e6;

    @Property(tries = 400)
    void whatAPlanPlantsKeepsToEveryRow(@ForAll long seed) {
        assertKeepsToEveryRow(RandomSeasons.season(seed, MOST_FIELDS), seed);
    }

    @Property(tries = 400)
    void whatAPlanOfWhatIsLeftPlantsKeepsToEveryRow(@ForAll long seed, @ForAll @IntRange(max = 80) int share) {
        Season left = GoingOnTest.left(RandomSeasons.season(seed, MOST_FIELDS), seed, share / 100.0);
        Assume.that(!left.fields().isEmpty());

        assertKeepsToEveryRow(left, seed);
    }

    private static void assertKeepsToEveryRow(Season season, long seed) {
        CompiledSeason compiled = CompiledSeason.of(season);
        CompiledSeason eased = OvertimeAsHours.of(compiled);
        Relaxation relaxation = Relaxation.of(eased, FieldGroups.of(eased), Aim.unserved());

        for (Plan plan : RandomPlans.of(compiled, seed)) {
            double[] planted = planted(relaxation, season, plan);
            for (int v = 0; v < planted.length; v++) {
                assertThat(planted[v]).isBetween(0.0, relaxation.program().upper(v));
            }
            for (LinearProgram.Row row : relaxation.program().rows()) {
                double sum = row.terms().stream()
                        .mapToDouble(term -> term.coefficient() * planted[term.variable()])
                        .sum();
                assertThat(sum).as(row::toString).isGreaterThanOrEqualTo(row.atLeast() - 0.01);
            }
        }
    }

    /** Area planted by the end of each day, by variable, dm2. */
    private static double[] planted(Relaxation relaxation, Season season, Plan plan) {
        double[] planted = new double[relaxation.program().variables()];
        for (int g = 0; g < relaxation.groups().size(); g++) {
            List<String> ids = relaxation.groups().get(g).fields().stream()
                    .map(field -> season.fields().get(field).id())
                    .toList();
            for (int day = 0; day < relaxation.days(); day++) {
                int variable = relaxation.planted(g, day);
                long by = plantedBy(season, plan, ids, day);
                if (variable < 0) {
                    assertThat(by).isZero();
                } else {
                    planted[variable] = by;
                }
            }
        }
        return planted;
    }

    private static long plantedBy(Season season, Plan plan, List<String> ids, int lastDay) {
        return plan.planters().values().stream()
                .flatMap(planter -> planter.activities().stream())
                .filter(Activity.Plant.class::isInstance)
                .map(Activity.Plant.class::cast)
                .filter(piece -> ids.contains(piece.field()))
                .filter(piece ->
                        ChronoUnit.DAYS.between(season.first(), piece.start().toLocalDate()) <= lastDay)
                .mapToLong(piece -> Math.round(piece.areaHa() * DM2_PER_HA))
                .sum();
    }
}

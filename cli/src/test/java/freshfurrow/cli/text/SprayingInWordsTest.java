package freshfurrow.cli.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.cli.day.MachineDay;
import freshfurrow.cli.day.NurseTank;
import freshfurrow.cli.day.PlanIndex;
import freshfurrow.cli.example.ExamplePlan;
import freshfurrow.cli.safety.Hazard;
import freshfurrow.cli.safety.Hazards;
import freshfurrow.cli.sheets.CrewSheets;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Work;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The example plan as that of a sprayer: the same work, of which people read that it is sprayed. */
final class SprayingInWordsTest {
    private static final LocalDate TUESDAY = LocalDate.of(2027, 4, 20);
    private static final Plan PLANTED = ExamplePlan.plan();
    private static final Plan SPRAYED = sprayed(PLANTED);

    @Test
    void aDaySheetSaysSprayWhereAPlantersSaysPlant() {
        String planted = String.join("\n", DaySheet.lines(PLANTED, TUESDAY));
        String sprayed = String.join("\n", DaySheet.lines(SPRAYED, TUESDAY));

        assertThat(planted).contains("PLANTER P1", "PLANT ", "to plant").doesNotContainIgnoringCase("spray");
        assertThat(sprayed).contains("SPRAYER P1", "SPRAY ", "to spray").doesNotContainIgnoringCase("plant");
    }

    @Test
    void aCrewSheetDoesToo() {
        String sheets = CrewSheets.html(SPRAYED, MachineDay.allOf(SPRAYED));

        assertThat(sheets).contains("Sprayer ", "<b>Spray</b>").doesNotContain("Planter ", "<b>Plant</b>");
    }

    @Test
    void whoSpraysIsCautionedAboutDriftAndReentryAndWhoPlantsIsNot() {
        assertThat(new Hazards(new PlanIndex(SPRAYED)).on(TUESDAY)).hasAtLeastOneElementOfType(Hazard.Spraying.class);
        assertThat(new Hazards(new PlanIndex(PLANTED)).on(TUESDAY)).noneMatch(Hazard.Spraying.class::isInstance);
        assertThat(Cautions.SPRAYING).contains("drifts", "wind", "labels, the law and local rules", "come back");
    }

    @Test
    void whatIsMountedOnARigStandsOnTheSheetOfTheRig() {
        // 1,600 L are passed on at 07:00 and 8 ha sprayed until 09:15: on paper and in the tank until then
        Plan mounted = sprayed(PLANTED, Optional.of("R1"));
        String day = String.join("\n", DaySheet.lines(mounted, TUESDAY));
        String sheets = CrewSheets.html(mounted, MachineDay.allOf(mounted));

        assertThat(day).contains("RIG R1", "READY     1,600 L to spray with P1 at N40", "SPRAY     8.00 ha in N40");
        assertThat(day).doesNotContain("SPRAYER", "TRANSFER", "FILL");
        assertThat(sheets)
                .contains("<b>Get ready to spray</b>", "<b>Spray</b>")
                .doesNotContain("Sprayer ", "Transfer</b>");
        NurseTank tank = NurseTank.of(mounted, "R1");
        assertThat(tank.litresAt(TUESDAY.atTime(7, 30)) - tank.litresAt(TUESDAY.atTime(9, 16)))
                .isCloseTo(1_600, within(0.01));
        assertThat(new Hazards(new PlanIndex(mounted)).on(TUESDAY)).hasAtLeastOneElementOfType(Hazard.Spraying.class);
    }

    @Test
    void whatIsDoneAndLeftHasTheWordsOfTheWorkOrOfBoth() {
        WorkWords both = new WorkWords(Set.of(Work.SPRAY, Work.PLANT));

        assertThat(WorkWords.of(PLANTED).done()).isEqualTo("planted");
        assertThat(WorkWords.of(SPRAYED).undone()).isEqualTo("unsprayed");
        assertThat(both.done()).isEqualTo("planted or sprayed");
        assertThat(both.machines()).isEqualTo("planters and sprayers");
        assertThat(WorkWords.capital(both.undone())).isEqualTo("Unplanted or unsprayed");
    }

    private static Plan sprayed(Plan plan) {
        return sprayed(plan, Optional.empty());
    }

    private static Plan sprayed(Plan plan, Optional<String> on) {
        Map<String, Plan.PlanterPlan> planters = new LinkedHashMap<>();
        plan.planters()
                .forEach((id, its) -> planters.put(
                        id,
                        new Plan.PlanterPlan(Work.SPRAY, on, its.tankL(), its.fields(), List.of(), its.activities())));
        return new Plan(
                plan.season(),
                plan.score(),
                plan.totals(),
                planters,
                plan.rigs(),
                plan.loads(),
                plan.batches(),
                plan.unserved(),
                plan.bounds(),
                plan.limits());
    }
}

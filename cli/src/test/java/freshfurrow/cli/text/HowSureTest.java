package freshfurrow.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.example.ExamplePlan;
import freshfurrow.cli.example.ExampleSeason;
import freshfurrow.model.plan.Chances;
import freshfurrow.model.plan.Plan;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class HowSureTest {
    private static final Plan PLAN = ExamplePlan.plan();

    @Test
    void cropsAreToldBySeasonsOfAHundred() {
        Map<String, Double> inWindow = new LinkedHashMap<>();
        inWindow.put("corn", 0.853);
        inWindow.put("beans", 1.0);

        assertThat(HowSure.crops(with(Map.of(), inWindow)))
                .contains("of 100 simulated seasons, all corn is in its window in 85, all beans in 100");
    }

    @Test
    void whatHappenedAtAllIsNotToldAsNothing() {
        assertThat(HowSure.ofCrop(with(Map.of(), Map.of("corn", 0.998)), "corn"))
                .isEqualTo("; all in its window in 99 of 100 simulated seasons");
        assertThat(HowSure.ofCrop(with(Map.of(), Map.of("corn", 0.003)), "corn"))
                .contains(" in 1 of 100 ");
        assertThat(HowSure.ofCrop(with(Map.of(), Map.of("corn", 0.0)), "corn")).contains(" in 0 of 100 ");
    }

    @Test
    void loadsThatGoStaleAreCounted() {
        assertThat(HowSure.stale(with(Map.of("L0001", 0.9, "L0002", 0.8), Map.of())))
                .contains("about 2 of 2 loads in a season");
        assertThat(HowSure.stale(with(Map.of("L0002", 0.2), Map.of()))).contains("less than 1 of 2 loads in a season");
    }

    @Test
    void theLikeliestLoadsAreNamedFirst() {
        assertThat(HowSure.lines(with(Map.of("L0001", 0.05, "L0002", 0.25), Map.of())))
                .hasSize(4)
                .startsWith("", "Most likely to go stale")
                .satisfies(lines ->
                        assertThat(lines.get(2)).startsWith("  L0002 into P1").endsWith("in 25 of 100 seasons"))
                .satisfies(lines ->
                        assertThat(lines.get(3)).startsWith("  L0001 into P1").endsWith("in 5 of 100 seasons"));
    }

    @Test
    void aCrewIsToldOfALoadThatMayGoStale() {
        Plan plan = with(Map.of("L0002", 0.25, "L0001", 0.004), Map.of());
        assertThat(HowSure.ofLoad(plan, plan.loads().get(1))).isEqualTo(", goes stale in 25 of 100 seasons");
        assertThat(HowSure.ofLoad(plan, plan.loads().get(0))).isEmpty();
    }

    @Test
    void whereNothingVariesNothingIsSaid() {
        assertThat(HowSure.lines(PLAN)).isEmpty();
        assertThat(HowSure.crops(PLAN)).isEmpty();
        assertThat(HowSure.stale(PLAN)).isEmpty();
        assertThat(String.join("\n", PlanReport.lines(ExampleSeason.season(), PLAN)))
                .doesNotContain("stale", "How sure");
    }

    @Test
    void theReportSaysHowSureThePlanIs() {
        List<String> lines = PlanReport.lines(ExampleSeason.season(), with(Map.of("L0002", 0.25), Map.of("corn", 0.9)));
        assertThat(lines)
                .anyMatch(line -> line.startsWith("How sure") && line.contains("all corn is in its window in 90"));
        assertThat(lines).contains("Most likely to go stale");
    }

    private static Plan with(Map<String, Double> stale, Map<String, Double> inWindow) {
        return PLAN.withChances(new Chances(400, stale, inWindow));
    }
}

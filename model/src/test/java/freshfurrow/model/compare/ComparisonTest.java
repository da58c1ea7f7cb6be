package freshfurrow.model.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.season.Costs;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class ComparisonTest {
    /** 25 an hour with fuel, 0.5 a km, 0.2 a kg, 10 a late ha-day, 700 a bare ha. */
    private static final Costs COSTS =
            new Costs(Optional.of("EUR"), 20, 5, 0.5, 0.2, 10, 700, 0, 0, 0, Map.of("R1", 4_000.0));

    @Test
    void aSpringCostsHoursRoadsCompostLatenessAndBareGround() {
        // 100 h x 25 + 200 km x 0.5 + 1,000 kg x 0.2 + 6 ha-days x 10 + 2 ha x 700 = 2,500 + 100 + 200 + 60 + 1,400
        assertThat(spring(6, 2, 10).at(COSTS, 0, 0).runningCost()).hasValue(4_260);
    }

    @Test
    void theChanceCountsSpringsThatArePlantedInWholeAndInTime() {
        LivedVariant variant = variant("one", spring(0, 0, 1), spring(1, 0, 1), spring(0, 1, 1), spring(0, 0, 1));

        assertThat(Comparison.of(List.of(variant), Measure.of(false, false))
                        .get(0)
                        .insideWindows()
                        .springs())
                .isEqualTo(2);
    }

    @Test
    void aVariantIsHeldAgainstTheBaseSpringBySpring() {
        List<VariantSummary> summaries = Comparison.of(
                List.of(
                        variant("base", spring(0, 0, 10), spring(0, 0, 20), spring(0, 0, 30)),
                        variant("other", spring(0, 0, 8), spring(0, 0, 17), spring(0, 0, 29))),
                Measure.of(false, false));

        assertThat(summaries.get(0).differences()).isEmpty();
        PairedDifference wait = summaries.get(1).differences().get(Measure.WAIT);
        assertThat(wait.mean()).isCloseTo(-2, within(1e-12));
        assertThat(wait.less()).isEqualTo(3);
        assertThat(summaries.get(1).differences().get(Measure.LATE).toldApart()).isFalse();
    }

    @Test
    void aDifferenceThatTheLuckOfPlansMayBringIsNotToldApart() {
        // waiting differs by 2 h in each spring, and by a standard deviation of 1.0 or 0.9 h from try to try: 2 x 1 h
        LivedVariant base = variant("base", spring(0, 0, 10), spring(0, 0, 20));
        List<SpringFigures> shorter = List.of(spring(0, 0, 8), spring(0, 0, 18));

        LivedVariant lucky = new LivedVariant("other", OptionalDouble.empty(), Map.of(Measure.WAIT, 1.0), shorter);
        LivedVariant sure = new LivedVariant("other", OptionalDouble.empty(), Map.of(Measure.WAIT, 0.9), shorter);

        assertThat(Comparison.of(List.of(base, lucky), Measure.of(false, false))
                        .get(1)
                        .toldApart(Measure.WAIT))
                .isFalse();
        assertThat(Comparison.of(List.of(base, sure), Measure.of(false, false))
                        .get(1)
                        .toldApart(Measure.WAIT))
                .isTrue();
    }

    @Test
    void whatAVariantSavesIsWhatItMayCostAYear() {
        // running: base 2,800 + 10 x late, other 2,800: saved 100 and 300, 200 in the mean; R2 costs 150 a year, so it
        // pays
        LivedVariant base = new LivedVariant(
                "base",
                OptionalDouble.of(4_000),
                Map.of(),
                List.of(spring(10, 0, 0).at(COSTS, 0, 0), spring(30, 0, 0).at(COSTS, 0, 0)));
        LivedVariant other = new LivedVariant(
                "other",
                OptionalDouble.of(4_150),
                Map.of(),
                List.of(spring(0, 0, 0).at(COSTS, 0, 0), spring(0, 0, 0).at(COSTS, 0, 0)));

        Money money = Comparison.of(List.of(base, other), Measure.of(false, false))
                .get(1)
                .money()
                .orElseThrow();

        assertThat(money.breakEven().orElseThrow().mean()).isCloseTo(200, within(1e-9));
        assertThat(money.yearlyExtra()).isCloseTo(150, within(1e-9));
        assertThat(money.difference().orElseThrow().mean()).isCloseTo(-50, within(1e-9));
        assertThat(money.season().median()).isCloseTo(6_950, within(1e-9));
    }

    @Test
    void aVariantWithoutPricesHasNoMoney() {
        assertThat(Comparison.of(List.of(variant("base", spring(0, 0, 1))), Measure.of(false, false))
                        .get(0)
                        .money())
                .isEmpty();
    }

    private static LivedVariant variant(String name, SpringFigures... springs) {
        return new LivedVariant(name, OptionalDouble.empty(), Map.of(), List.of(springs));
    }

    private static SpringFigures spring(double lateHaDays, double unservedHa, double waitH) {
        return new SpringFigures(
                86_400, lateHaDays, unservedHa, 5, 3, waitH, 0.5, 0, 1_000, 100, 200, 0, 1, 0, OptionalDouble.empty());
    }
}

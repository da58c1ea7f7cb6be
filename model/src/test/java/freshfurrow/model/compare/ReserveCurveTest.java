package freshfurrow.model.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.season.Work;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A season of ten days, whose fields need 5 kg/ha. */
class ReserveCurveTest {
    private static final LocalDate FIRST = LocalDate.of(2027, 4, 19);

    @Test
    void theSumIsLateAndUnplantedAndLostAreaDays() {
        // 3 ha-days late, 0.5 ha unplanted for ten days, 10 kg lost for 2 ha
        ReserveCurve curve = curve(variant(600, List.of(spring(3, 0.5, 10, OptionalDouble.empty()))));

        assertThat(curve.isMoney()).isFalse();
        assertThat(curve.least().sum()).isCloseTo(3 + 5 + 2, within(1e-9));
    }

    @Test
    void whereThereArePricesItIsWhatTheSeasonCosts() {
        ReserveCurve curve = curve(variant(
                600, List.of(spring(3, 0.5, 10, OptionalDouble.of(900)), spring(0, 0, 0, OptionalDouble.of(700)))));

        assertThat(curve.isMoney()).isTrue();
        assertThat(curve.least().sum()).isCloseTo(800, within(1e-9));
    }

    @Test
    void theReserveWithTheLeastSumIsNamed() {
        ReserveCurve curve =
                curve(variant(0, sums(20, 22, 24)), variant(600, sums(10, 12, 14)), variant(1_200, sums(30, 32, 34)));

        assertThat(curve.least().reserveS()).isEqualTo(600);
        assertThat(curve.asGood()).isEmpty();
    }

    @Test
    void reservesThatTheSpringsDoNotTellApartAreAsGood() {
        // differences -4, +6, +1: mean 1, t interval far on both sides of 0
        ReserveCurve curve = curve(variant(0, sums(10, 12, 14)), variant(600, sums(6, 18, 15)));

        assertThat(curve.least().reserveS()).isZero();
        assertThat(curve.asGood()).extracting(ReserveCurve.Point::reserveS).containsExactly(600);
    }

    @Test
    void withoutReservesThereIsNoCurve() {
        ComparedVariant base =
                new ComparedVariant(lived(sums(1, 2)), "0".repeat(64), List.of(), Optional.empty(), Optional.empty());
        assertThat(ReserveCurve.of(new ComparedSprings(rules(), List.of(1, 2), List.of(base))))
                .isEmpty();
    }

    private static ReserveCurve curve(ComparedVariant... variants) {
        int springs = variants[0].lived().springs().size();
        List<Integer> numbers = new ArrayList<>();
        for (int number = 1; number <= springs; number++) {
            numbers.add(number);
        }
        return ReserveCurve.of(new ComparedSprings(rules(), numbers, List.of(variants)))
                .orElseThrow();
    }

    private static List<SpringFigures> sums(double... lateHaDays) {
        List<SpringFigures> springs = new ArrayList<>();
        for (double late : lateHaDays) {
            springs.add(spring(late, 0, 0, OptionalDouble.empty()));
        }
        return springs;
    }

    private static SpringFigures spring(double lateHaDays, double unservedHa, double dumpedKg, OptionalDouble cost) {
        return new SpringFigures(
                86_400, lateHaDays, unservedHa, 5, 3, 1, 0.5, dumpedKg, 1_000, 100, 200, 0, 1, 2, cost);
    }

    private static ComparedVariant variant(int reserveS, List<SpringFigures> springs) {
        return new ComparedVariant(
                lived(springs),
                "0".repeat(64),
                List.of(),
                Optional.empty(),
                Optional.of(new TriedReserve(reserveS, 5)));
    }

    private static LivedVariant lived(List<SpringFigures> springs) {
        return new LivedVariant("variant", OptionalDouble.empty(), Map.of(), springs);
    }

    private static LivingRules rules() {
        return new LivingRules(
                "ten days",
                "season.yaml",
                FIRST,
                FIRST.plusDays(9),
                DisplayUnits.METRIC,
                Optional.empty(),
                "station.csv",
                30,
                1,
                100,
                0,
                0,
                false,
                true,
                Set.of(Work.PLANT));
    }
}

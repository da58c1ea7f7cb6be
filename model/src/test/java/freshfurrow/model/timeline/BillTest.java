package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.plan.Bill;
import freshfurrow.model.season.Costs;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Bills of the worked seasons, each figure by hand. */
class BillTest {
    private static final Costs PRICES =
            new Costs(Optional.of("EUR"), 24, 14, 0.5, 0.2, 10, 700, 50, 0.003, 60, Map.of("R1", 5_000.0));

    /**
     * One load, as {@code OneLoadTest} has it. P1 is at work from 07:00:00, when it sets off, to 08:56:40: 7,000 s. R1 from 06:00:00 to
     * 07:36:20: 5,780 s. Together 12,780 s = 3.55 h, at 24 + 14 an hour.
     */
    @Test
    void oneLoadCostsHoursRoadsCompostAndWater() {
        Bill bill = bill(new WorkedSeason().field("A", 5).prices(PRICES).plan("A"));

        assertThat(lines(bill))
                .containsExactly(
                        "work 3.55 x 38.0 = 134.9",
                        "road 6.0 x 0.5 = 3.0", // P1 3 km, R1 1 + 2 km
                        "compost 50.0 x 0.2 = 10.0",
                        "late 0.0 x 10.0 = 0.0",
                        "unplanted 0.0 x 700.0 = 0.0",
                        "untreated 0.0 x 50.0 = 0.0",
                        "water 2000.0 x 0.003 = 6.0",
                        "overtime 0.0 x 60.0 = 0.0");
        assertThat(bill.sum()).isEqualTo(153.9);
        assertThat(bill.currency()).contains("EUR");
        assertThat(bill.harm()).isZero();
    }

    /** What a machine costs a year is not in it: a plan changes nothing about that. */
    @Test
    void theScoreIsTheBillInMillionthsAndEffortComesNext() {
        WorkedPlan plan = new WorkedSeason().field("A", 5).prices(PRICES).plan("A");

        assertThat(plan.plan().score().hard()).isZero();
        assertThat(plan.plan().score().medium()).isEqualTo(-153_900_000);
        assertThat(plan.plan().score().soft()).isEqualTo(-65); // as without prices
    }

    /** Nobody is paid for a field that nobody plants: 5 ha x 700. */
    @Test
    void aFieldInNoListCostsItsLoss() {
        Bill bill = bill(new WorkedSeason().field("A", 5).prices(PRICES).plan(""));

        assertThat(bill.sum()).isEqualTo(3_500);
        assertThat(bill.harm()).isEqualTo(3_500);
    }

    /** As {@code LateTest} has it, 30 ha-days: they count alike whatever the field's late weight, as in comparisons. */
    @Test
    void lateAreaIsNotWeighted() {
        assertThat(lines(bill(fiveHectaresADay(1).plan("A")))).contains("late 30.0 x 10.0 = 300.0");
    }

    /**
     * Timeliness cost by ASABE EP496 of an operation that is delayed: K A^2 Y V / (Z G C pwd), where Z is 2 and G C pwd the area of a day (from
     * memory). With K 0.01 a day, 8 t/ha and 125 a ton a late day costs 10 a hectare, and 20 ha at 5 ha a day
     * 0.01 x 20^2 x 8 x 125 / (2 x 5) = 400. The standard counts from the moment that would be best; we count whole days from midnight: half a day
     * less for each hectare if that moment is the morning of the first day, half a day more if it is the evening before.
     */
    @Test
    void lateAreaCostsWhatTheStandardCallsTimeliness() {
        double published = 0.01 * 20 * 20 * 8 * 125 / (2 * 5);
        double halfADay = 0.5 * 20 * 10;

        assertThat(bill(fiveHectaresADay(1).plan("A")).harm()).isEqualTo(published - halfADay);
        assertThat(bill(fiveHectaresADay(0).plan("A")).harm()).isEqualTo(published + halfADay);
    }

    /** @param lastDay of the window */
    private static WorkedSeason fiveHectaresADay(int lastDay) {
        return new WorkedSeason()
                .days(4)
                .planter("P1", planter -> planter.unfoldedAt("A").hours("07:00/08:36:40"))
                .field("A", 20, field -> field.window(lastDay, lastDay).lateWeight(2))
                .prices(PRICES);
    }

    private static Bill bill(WorkedPlan plan) {
        return plan.plan().totals().bill().orElseThrow();
    }

    private static List<String> lines(Bill bill) {
        return bill.lines().stream()
                .map(line -> line.item().key() + " " + line.amount() + " x " + line.price() + " = " + line.cost())
                .toList();
    }
}

package freshfurrow.model.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.plan.Bill;
import freshfurrow.model.season.Costs;
import freshfurrow.model.season.Season;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CostsTest {
    @TempDir
    private Path folder = Path.of("");

    /** Factors: NIST SP 811: acre 0.40468564224 ha, pound 0.45359237 kg, mile 1.609344 km (from memory). */
    @Test
    void pricesAreKeptPerSiUnit() {
        Costs costs = read("""
                costs: {currency: USD, labour: 24 /h, fuelWork: 14 /h, fuelRoad: 0.60 /mi, compost: 0.08 /lb, late: 4 /ac/d, \
                unserved: 300 /ac, yearly: {P1: 9000, R1: "5200"}}
                """).orElseThrow();

        assertThat(costs.currency()).contains("USD");
        assertThat(costs.labourPerH()).isCloseTo(24, within(1e-9));
        assertThat(costs.fuelPerH()).isCloseTo(14, within(1e-9));
        assertThat(costs.fuelPerKm()).isCloseTo(0.60 / 1.609344, within(1e-9));
        assertThat(costs.compostPerKg()).isCloseTo(0.08 / 0.45359237, within(1e-9));
        assertThat(costs.latePerHaDay()).isCloseTo(4 / 0.40468564224, within(1e-9));
        assertThat(costs.unservedPerHa()).isCloseTo(300 / 0.40468564224, within(1e-9));
        assertThat(costs.yearly()).isEqualTo(Map.of("P1", 9000.0, "R1", 5200.0));
        assertThat(costs.yearlySum()).isEqualTo(14_200);
    }

    @Test
    void aSeasonWithoutPricesHasNone() {
        assertThat(read("")).isEmpty();
    }

    @Test
    void whatIsLeftOutCostsNothing() {
        Costs costs = read("costs: {labour: 20 /h}\n").orElseThrow();

        assertThat(costs.labourPerH()).isCloseTo(20, within(1e-9));
        assertThat(costs.compostPerKg()).isZero();
        assertThat(costs.yearlySum()).isZero();
    }

    @Test
    void aMachineThatThereIsNotIsAProblem() {
        assertThat(problems("costs: {yearly: {R9: 5200}}\n"))
                .singleElement()
                .asString()
                .contains("R9", "R1");
    }

    @Test
    void aCurrencyThatThereIsNotIsAProblem() {
        assertThat(problems("costs: {currency: DOLLARS}\n"))
                .singleElement()
                .asString()
                .contains("'DOLLARS' is not a currency", "ISO 4217");
    }

    @Test
    void aPriceOfTheWrongKindIsAProblem() {
        assertThat(problems("costs: {labour: 24 /ac}\n"))
                .singleElement()
                .asString()
                .contains("/ac is not a unit of a price per time", "24 /h");
    }

    /** 10 ha late a day, 20 km and 100 kg cost the same at US prices and at what those are in metric units. */
    @Test
    void usAndMetricPricesMakeTheSameBill() {
        Costs us = read("""
                costs: {labour: 24 /h, fuelRoad: 0.60 /mi, compost: 0.08 /lb, late: 4 /ac/d, unserved: 300 /ac, untreated: 30 /ac, \
                water: 0.01 /gal, overtime: 51 /h}
                """).orElseThrow();
        Costs metric = read("""
                costs: {labour: 24 /h, fuelRoad: 0.3728227 /km, compost: 0.1763698 /kg, late: 9.884215 /ha/d, \
                unserved: 741.3161 /ha, untreated: 74.13161 /ha, water: 2.641721 /m3, overtime: 51 /h}
                """).orElseThrow();

        assertThat(Bill.of(us, item -> 10).lines())
                .extracting(Bill.Line::cost)
                .isEqualTo(Bill.of(metric, item -> 10).lines().stream()
                        .map(Bill.Line::cost)
                        .toList())
                .containsExactly(240.0, 3.73, 1.76, 98.84, 7413.16, 741.32, 0.03, 510.0);
    }

    @Test
    void plansAreJudgedByMoneyWhereTheGoalsSaySo() {
        Season season = ((Reading.Valid) byMoney("Money", "costs: {labour: 20 /h}\n")).season();

        assertThat(season.goals().byMoney().orElseThrow().labourPerH()).isEqualTo(20);
        assertThat(((Reading.Valid) reading("costs: {labour: 20 /h}\n"))
                        .season()
                        .goals()
                        .byMoney())
                .isEmpty();
    }

    @Test
    void aPriceOfNothingIsAsGoodAsNone() {
        assertThat(read("costs: {labour: 20 /h, late: 0 /ac/d, untreated: 0 /ha, water: 0 /gal, overtime: 0 /h}\n"))
                .isEqualTo(read("costs: {labour: 20 /h}\n"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "costs: {labour: 0 /h}\n", "costs: {yearly: {R1: 5200}}\n"})
    void byMoneyWithoutAPriceIsOneProblem(String costs) {
        assertThat(WrittenSeason.problems(byMoney("money", costs)))
                .singleElement()
                .asString()
                .contains("nothing has a price", "costs: {labour: 24 /h");
    }

    @Test
    void whatPlansCannotBeJudgedByIsAProblem() {
        assertThat(WrittenSeason.problems(byMoney("yield", "costs: {labour: 20 /h}\n")))
                .singleElement()
                .asString()
                .contains("'yield' is not what plans can be judged by", "by: money");
    }

    private Optional<Costs> read(String costs) {
        return ((Reading.Valid) reading(costs)).costs();
    }

    private List<String> problems(String costs) {
        return WrittenSeason.problems(reading(costs));
    }

    private Reading byMoney(String by, String costs) {
        return new WrittenSeason(folder, WrittenSeason.RIGHT.replace("goals: {", "goals: {by: " + by + ", ") + costs)
                .read();
    }

    private Reading reading(String costs) {
        return new WrittenSeason(folder, WrittenSeason.RIGHT + costs).read();
    }
}

package freshfurrow.model.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.season.Costs;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

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

    private Optional<Costs> read(String costs) {
        return ((Reading.Valid) reading(costs)).costs();
    }

    private List<String> problems(String costs) {
        return WrittenSeason.problems(reading(costs));
    }

    private Reading reading(String costs) {
        return new WrittenSeason(folder, WrittenSeason.RIGHT + costs).read();
    }
}

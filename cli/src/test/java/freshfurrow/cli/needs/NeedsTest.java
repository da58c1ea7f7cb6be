package freshfurrow.cli.needs;

import static freshfurrow.cli.example.ExampleSeason.MONDAY;
import static freshfurrow.cli.example.ExampleSeason.TUESDAY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.cli.example.ExampleSeason;
import freshfurrow.model.season.Season;
import org.junit.jupiter.api.Test;

final class NeedsTest {
    private static final double LB = 0.45359237;
    private static final double GAL = 3.785411784;
    private static final Season SEASON = ExampleSeason.season();

    @Test
    void aCropNeedsItsAreaTimesTheRates() {
        // soybean: 4 + 2 ha at 2 kg/ha and 200 L/ha, 72 ha a day
        CropNeed soybean = CropNeed.byCrop(SEASON).get(1);
        assertThat(soybean.crop()).isEqualTo("soybean");
        assertThat(soybean.fields()).isEqualTo(2);
        assertThat(soybean.areaHa()).isEqualTo(6);
        assertThat(soybean.compostKg()).isEqualTo(12);
        assertThat(soybean.mixL()).isEqualTo(1_200);
        assertThat(soybean.opens()).isEqualTo(MONDAY);
        assertThat(soybean.closes()).isEqualTo(MONDAY.plusDays(3));
        assertThat(soybean.daysNeeded()).isCloseTo(6 / 72.0, within(1e-9));
        assertThat(soybean.daysThere()).isEqualTo(4);
    }

    @Test
    void allCropsTogetherNeedTheirSum() {
        assertThat(CropNeed.ofAll(SEASON, "all").compostKg()).isEqualTo(28);
    }

    @Test
    void compostIsWeighedOnTheEveOfEachDeliveryAndAtTheEnd() {
        // By Tuesday S80's window closes (8 kg) and the windrow is there (20 kg); in all 28 kg are needed and 26 kg
        // there.
        assertThat(CompostNeed.of(SEASON))
                .containsExactly(new CompostNeed(TUESDAY, 8, 20), new CompostNeed(MONDAY.plusDays(6), 28, 26));
    }

    @Test
    void compostIsShortByWhatIsMissing() {
        assertThat(new CompostNeed(TUESDAY, 28, 26).shortKg()).isEqualTo(2);
        assertThat(new CompostNeed(TUESDAY, 26, 28).shortKg()).isZero();
    }

    @Test
    void aRigWeighsItsWaterAndTheCompostOfABatch() {
        // 3,000 L x 0.999975 kg/L = 2,999.925 kg of water and 16 kg of compost, of a payload of 3,500 kg
        RigWeight weight = RigWeight.of(SEASON.rigs().get(0), false);
        assertThat(weight.loadKg()).isCloseTo(3_015.925, within(1e-6));
        assertThat(weight.leftKg()).hasValueCloseTo(484.075, within(1e-6));
    }

    /** Water is about 8.34 lb a US gallon: 1 kg/L with the factors of NIST Handbook 44, appendix C. */
    @Test
    void aGallonOfWaterWeighsTheHandbooksPounds() {
        assertThat(GAL / LB).isCloseTo(8.345, within(0.005));
    }
}

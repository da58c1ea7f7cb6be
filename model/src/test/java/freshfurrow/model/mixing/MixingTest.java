package freshfurrow.model.mixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.season.ExtractAt;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.WithDefaults;
import freshfurrow.model.season.WorkHours;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class MixingTest {
    private static final double L_PER_GAL = 3.785411784;
    private static final double KG_PER_LB = 0.45359237;
    private static final double HA_PER_AC = 0.40468564224;
    private static final double M2_PER_SQ_FT = 0.09290304;

    private static final Recipe STANDARD =
            WithDefaults.recipe("standard", 20 * L_PER_GAL / HA_PER_AC, 2 * KG_PER_LB / HA_PER_AC, 5 * 3600);

    private static Rig drum(double gallons, double pounds) {
        return WithDefaults.rig(
                "R1",
                gallons * L_PER_GAL,
                pounds * KG_PER_LB,
                900,
                180,
                1200 * L_PER_GAL,
                4,
                15,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                ExtractAt.FIELD,
                "yard",
                WorkHours.ALWAYS);
    }

    /** Common practice, no source: 40 gal of drum water with 30 lb of compost make 300 gal, 1 part to 6.5 of water. */
    @Test
    void aBatchOfTheTradeIsThinnedOneToSixAndAHalf() {
        Dilution dilution = Dilution.ofHectare(drum(40, 30), STANDARD);

        assertThat(dilution.waterToOne()).isCloseTo(6.5, within(1e-9));
        assertThat(dilution.possible()).isTrue();
        assertThat(new Dilution(40, 300).makeUpL()).isEqualTo(260);
    }

    @Test
    void aRecipeStrongerThanTheDrumCannotBeMixed() {
        // 2 lb in 20 gal are 0.1 lb/gal: 400 gal of drum water with 30 lb have 0.075, 300 gal just 0.1
        assertThat(Dilution.ofHectare(drum(400, 30), STANDARD).possible()).isFalse();
        assertThat(Dilution.ofHectare(drum(400, 30), STANDARD).makeUpL()).isZero();
        assertThat(Dilution.ofHectare(drum(300, 30), STANDARD).possible()).isTrue();
        assertThat(Dilution.ofHectare(drum(300, 30), STANDARD).waterToOne()).isCloseTo(0, within(1e-9));
    }

    /** Common practice, no source: about 6 million organisms a square foot at 2 lb/ac, that is 2.9e8 delivered a gram. */
    @Test
    void theCountOfTheTradeIsSixMillionASquareFoot() {
        LabCount count = new LabCount(2.9e8, 1);

        assertThat(count.perM2(STANDARD) * M2_PER_SQ_FT).isCloseTo(6e6, within(0.05e6));
        // 2 lb x 453.59237 g x 2.9e8, in 20 gal x 3.785411784 L
        assertThat(count.perHa(STANDARD) * HA_PER_AC).isCloseTo(2.63084e11, within(1e6));
        assertThat(count.perLitre(STANDARD)).isCloseTo(2.63084e11 / 75.70823568, within(1e5));
    }

    @Test
    void whatTheExtractionLeavesBehindDoesNotCount() {
        assertThat(new LabCount(1e9, 0.8).deliveredPerGram()).isEqualTo(8e8);
        assertThatThrownBy(() -> new LabCount(1e9, 0))
                .hasMessage("an extraction share is more than 0, up to 1, not 0.0");
        assertThatThrownBy(() -> new LabCount(1e9, 1.1))
                .hasMessage("an extraction share is more than 0, up to 1, not 1.1");
        assertThatThrownBy(() -> new LabCount(0, 1)).hasMessage("a count is above 0, not 0.0");
    }

    @Test
    void compostFillsBucketsAndLeavesARest() {
        assertThat(Buckets.of(30 * KG_PER_LB, 10 * KG_PER_LB)).isEqualTo(new Buckets(3, 0));
        assertThat(Buckets.of(12, 5)).isEqualTo(new Buckets(2, 2));
        assertThat(Buckets.of(4, 5)).isEqualTo(new Buckets(0, 4));
    }
}

package freshfurrow.model.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.read.Reading;
import freshfurrow.model.read.SeasonFiles;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Season;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Ten springs; spring i uses 10 x i kg on each of the days 2 and 3, and draws 1,000 x i L at the well on day 2. */
class SupplyNeedsTest {
    private static final LocalDate FIRST = LocalDate.of(2027, 4, 19);
    private static final Season SEASON = season();

    @Test
    void whatIsEnoughInEightSpringsOfTenIsWhatTheEighthUses() {
        SupplyNeeds needs = needs(0.8);

        assertThat(needs.days().get(1).neededKg()).isZero();
        assertThat(needs.days().get(2).neededKg()).isCloseTo(80, within(1e-9));
        assertThat(needs.days().get(3).neededKg()).isCloseTo(160, within(1e-9));
        assertThat(needs.days().get(47).neededKg()).isCloseTo(160, within(1e-9));
    }

    @Test
    void aLotIsNeededOnTheDayOnWhichThoseBeforeItAreNotEnough() {
        SupplyNeeds needs = needs(0.8);

        // the heap of 100 kg is enough for day 2, not for day 3; 60 kg are taken from the second lot
        assertThat(needs.lots().get(0).neededBy()).contains(FIRST.plusDays(2));
        assertThat(needs.lots().get(1).neededBy()).contains(FIRST.plusDays(3));
        assertThat(needs.lots().get(1).neededKg()).isCloseTo(60, within(1e-9));
    }

    @Test
    void compostRunsOutWhenALotComesTooLate() {
        // the second lot comes on day 4; on day 3 60 kg lack
        assertThat(needs(0.8).stockOut().orElseThrow().date()).isEqualTo(FIRST.plusDays(3));
        assertThat(needs(0.8).stockOut().orElseThrow().lackKg()).isCloseTo(60, within(1e-9));
        assertThat(needs(0.5).stockOut()).isEmpty();
    }

    @Test
    void aWaterPointIsHeldAgainstItsLimitOnItsHeaviestDay() {
        SupplyNeeds.Point well = needs(0.8).points().get(0);

        // the limit is 6,000 gal = 22,712 L: no spring of ten draws as much as 99 % of it
        assertThat(well.mostL()).isCloseTo(8_000, within(1e-9));
        assertThat(well.limitL().orElseThrow()).isCloseTo(22_712, within(1.0));
        assertThat(well.springsAtLimit()).isZero();
    }

    private static SupplyNeeds needs(double sure) {
        List<SpringUse> springs =
                IntStream.rangeClosed(1, 10).mapToObj(SupplyNeedsTest::use).toList();
        return SupplyNeeds.of(SEASON, springs, springs, new SureShare(sure));
    }

    private static SpringUse use(int i) {
        double[] compostKg = new double[SEASON.days()];
        compostKg[2] = 10 * i;
        compostKg[3] = 10 * i;
        double[][] waterL = new double[2][SEASON.days()];
        waterL[0][2] = 1_000 * i;
        return new SpringUse(compostKg, waterL);
    }

    private static Season season() {
        Season spring = ((Reading.Valid) SeasonFiles.read(Path.of("../scenarios/spring"), List.of())).season();
        return spring.change()
                .compost(List.of(
                        new CompostLot("late", 1_000, FIRST.plusDays(4)),
                        new CompostLot("heap", 100, FIRST.minusDays(9))))
                .season();
    }
}

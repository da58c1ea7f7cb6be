package freshfurrow.solver.why;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.quantity.MassUnit;
import java.util.List;
import org.junit.jupiter.api.Test;

class ReliefsTest {
    @Test
    void aFieldThatIsInTimeNeedsNothing() {
        assertThat(new WhySeason().field("A", 5, 1, 1).explain("A", "A").reliefs())
                .isEmpty();
    }

    @Test
    void compostThatComesTwoDaysAfterTheWindowIsNeededTwoDaysSooner() {
        // A is 5 ha, one load, to be planted on day 1 with compost that is there on day 3
        WhySeason season = new WhySeason().field("A", 5, 1, 1).lot(1000, 3);

        assertThat(enough(season.explain("A", "A"))).containsExactly(new Relief.CompostSooner("lot0", 2));
    }

    @Test
    void fortyKilogramsShortAreFortyKilogramsMore() {
        // A and B take 2 x 5 ha x 10 kg/ha = 100 kg, 60 kg are there
        WhySeason season =
                new WhySeason().field("A", 5, 1, 1).field("B", 5, 1, 1).lot(60, 1);
        FieldExplanation why = season.explain("B", "A B");

        assertThat(why.plan().unserved()).singleElement().satisfies(left -> assertThat(left.areaHa())
                .isEqualTo(4, within(1e-6)));
        assertThat(enough(why)).containsExactly(new Relief.MoreCompost("lot0", 40));
    }

    @Test
    void fortyPoundsShortAreFortyPoundsMore() {
        double fortyPounds = 40 / MassUnit.POUND.fromKilograms(1);
        WhySeason season = new WhySeason()
                .units(DisplayUnits.US)
                .field("A", 5, 1, 1)
                .field("B", 5, 1, 1)
                .lot(100 - fortyPounds, 1);

        assertThat(enough(season.explain("B", "A B")))
                .singleElement()
                .isInstanceOfSatisfying(
                        Relief.MoreCompost.class, more -> assertThat(more.kg()).isEqualTo(fortyPounds, within(1e-9)));
    }

    @Test
    void aRigThatIsTooSlowIsQuickerOrNotAlone() {
        // A is 10 ha, two loads of 5 ha, to be planted on day 1. The rig has water at A at 06:11:40 (100 s to the well,
        // 400 s of
        // drawing, 200 s to A), the first batch of 25,200 s at 13:11:40, and is clean after transfer (800 s) and clean
        // (180 s) at
        // 13:28:00. From then on a ha take 5,040 a s of batch, 300 s + 100 a s of transfer and 1,000 a s of planting,
        // until 19:00:
        // 6,140 a = 19,620, a = 3.195, less 0.4 % of a tank (0.02 ha) at the most. The other 1.8 ha are a day late.
        // For a = 5 batches of b s have b + b <= 68,400 - 22,300 - 980 - 800 - 5,000 = 39,320: 22 % less, 25 % in steps
        // of 5 %.
        // With a second rig the second batch is ready before the first load is planted at 14:48:20.
        WhySeason season = new WhySeason().field("A", 10, 1, 1).batchTime(25_200);
        FieldExplanation why = season.explain("A", "A");

        assertThat(why.plan().totals().lateHaDays()).isEqualTo(5 - 3.195, within(0.02));
        assertThat(enough(why)).contains(new Relief.FasterBatches(25), new Relief.MoreRigs("R1", 1));
    }

    @Test
    void aWindowThatRainClosesIsOpenedByNothing() {
        // rain at midnight of day 1 closes days 1 to 3; the window ends on day 2
        FieldExplanation why = new WhySeason().field("A", 5, 1, 2).rain(1, 3).explain("A", "A");

        assertThat(why.plan().totals().lateHaDays()).isEqualTo(10, within(1e-6));
        assertThat(enough(why)).isEmpty();
        assertThat(why.reliefs().orElseThrow().inVain())
                .contains(new Relief.MoreRigs("R1", 3), new Relief.LongerDay("P1", 720));
    }

    @Test
    void aFieldInNoListIsLookedAtInItsBestPosition() {
        FieldExplanation why = new WhySeason().field("A", 5, 1, 1).lot(30, 1).explain("A", "");

        assertThat(why.positions().own()).isEmpty();
        assertThat(enough(why)).containsExactly(new Relief.MoreCompost("lot0", 20));
    }

    private static List<Relief> enough(FieldExplanation why) {
        return why.reliefs().orElseThrow().enough().stream()
                .map(Reliefs.Enough::relief)
                .toList();
    }
}

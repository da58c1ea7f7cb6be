package freshfurrow.solver.why;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.quantity.MassUnit;
import freshfurrow.model.timeline.GoneWithout;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Why a field is planted without extract, and what would change it: 1 ha takes 10 kg of compost. */
class UntreatedTest {
    @Test
    void aFieldWithExtractHasNothingToTell() {
        assertThat(new WhySeason()
                        .untreated()
                        .field("A", 5, 1, 1)
                        .explain("A", "A")
                        .untreated())
                .isEmpty();
    }

    @Test
    void whereNothingGoesWithoutAFieldIsNotSaidTo() {
        FieldExplanation why = new WhySeason().field("A", 8, 1, 4).lot(50, 1).explain("A", "A");

        assertThat(why.plan().unserved()).hasSize(1);
        assertThat(why.untreated()).isEmpty();
    }

    @Test
    void aFieldOnWhichTheCompostRunsOutLacksWhatTheRestTakes() {
        Untreated field = untreated(short30().explain("A", "A"));

        assertThat(field.withoutHa()).isEqualTo(3, within(1e-9));
        assertThat(field.without())
                .extracting(GoneWithout::reason)
                .containsExactly(new GoneWithout.NoCompost(Optional.empty()));
        assertThat(field.atItsPlace()).isEmpty();
        assertThat(enough(field)).containsExactly(new Relief.MoreCompost("lot0", 30));
    }

    @Test
    void withBatchesAtTheWaterItLacksTheSame() {
        assertThat(enough(untreated(short30().atTheWater().explain("A", "A"))))
                .containsExactly(new Relief.MoreCompost("lot0", 30));
    }

    @Test
    void inPoundsItLacksTheNextWholeOnes() {
        // 30 kg are 66.1 lb
        assertThat(enough(untreated(short30().units(DisplayUnits.US).explain("A", "A"))))
                .singleElement()
                .isInstanceOfSatisfying(
                        Relief.MoreCompost.class, more -> assertThat(MassUnit.POUND.fromKilograms(more.kg()))
                                .isEqualTo(67, within(1e-6)));
    }

    @Test
    void aFieldThatIsToGoWithoutTakesCompostFromTheNextIfItDoesNot() {
        // A and B take 50 kg each, 60 kg are there: with extract for A there are 10 kg for B, which are 1 ha of its 5
        WhySeason season = new WhySeason()
                .untreated()
                .field("A", 5, 1, 4)
                .field("B", 5, 1, 4)
                .lot(60, 1);
        FieldExplanation why = season.explain("A", "A B", Set.of("A"));
        Untreated field = untreated(why);

        assertThat(why.plan().totals().untreatedHa()).isEqualTo(5, within(1e-9));
        assertThat(field.without()).extracting(GoneWithout::reason).containsExactly(new GoneWithout.Decided());
        assertThat(field.atItsPlace().orElseThrow().plan().totals().untreatedHa())
                .isEqualTo(4, within(0.001));
        assertThat(field.atItsPlace().orElseThrow().plan().withoutExtract()).isEmpty();
        assertThat(enough(field)).containsExactly(new Relief.MoreCompost("lot0", 40));
        assertThat(field.elsewhere()).isEmpty();
    }

    @Test
    void aFieldThatGoesWithoutForNothingHasAPositionWithExtract() {
        // there is compost for both; A at its own place or after B, both in time
        WhySeason season = new WhySeason()
                .untreated()
                .field("A", 5, 1, 4)
                .field("B", 5, 1, 4)
                .lot(100, 1);
        Untreated field = untreated(season.explain("A", "A B", Set.of("A")));

        assertThat(field.atItsPlace().orElseThrow().plan().totals().untreatedHa())
                .isZero();
        assertThat(field.elsewhere().orElseThrow().plan().totals().untreatedHa())
                .isZero();
        assertThat(field.elsewhere().orElseThrow().position().index()).isEqualTo(1);
    }

    @Test
    void aPlanterThatWaitedLongerWouldBeFilled() {
        // The planter could plant from 07:00:00 on. The rig is in the field at 09:11:40 (100 s to the well, 400 s of
        // drawing, 200 s to
        // A) and has a batch at 09:26:40: a wait of 146:40 min, which 30 min and 23 x 5 min are not enough for.
        Untreated field = untreated(
                new WhySeason().untreated().lateRig(9, 30).field("A", 12, 1, 4).explain("A", "A"));

        assertThat(field.withoutHa()).isEqualTo(8.8, within(1e-9));
        assertThat(enough(field)).contains(new Relief.LongerWait("P1", 120));
    }

    private static WhySeason short30() {
        return new WhySeason().untreated().field("A", 8, 1, 4).lot(50, 1);
    }

    private static Untreated untreated(FieldExplanation why) {
        return why.untreated().orElseThrow();
    }

    private static List<Relief> enough(Untreated field) {
        return field.reliefs().enough().stream().map(Reliefs.Enough::relief).toList();
    }
}

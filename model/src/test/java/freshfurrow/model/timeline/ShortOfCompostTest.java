package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.season.CompostLot;
import org.junit.jupiter.api.Test;

/** A field of 10 ha takes 100 kg. */
class ShortOfCompostTest {
    @Test
    void aSeasonIsShortOfCompostWhereItsFieldsNeedMoreThanItsLotsHave() {
        assertThat(CompiledSeason.of(withHeap(100).season()).isShortOfCompost()).isFalse();
        assertThat(CompiledSeason.of(withHeap(99).season()).isShortOfCompost()).isTrue();
    }

    /** At 08:00:00 1.6 ha are planted, mix for 3.4 ha is in the tank, and 50 kg are left for the 5 ha beyond. */
    @Test
    void mixThatIsMadeNeedsNone() {
        UnderWay underWay = UnderWay.at(withHeap(100).plan("A"), "08:00");

        assertThat(CompiledSeason.of(underWay.left()).isShortOfCompost()).isFalse();
    }

    /** 100 kg are on board at 06:30:00, and none in the yard. */
    @Test
    void compostOnBoardIsThereToo() {
        UnderWay underWay =
                UnderWay.at(new WorkedSeason().heapInTheYard(100).field("A", 10).plan("A"), "06:30");

        assertThat(underWay.start().lots()).isEmpty();
        assertThat(CompiledSeason.of(underWay.left()).isShortOfCompost()).isFalse();
    }

    private static WorkedSeason withHeap(double kg) {
        return new WorkedSeason()
                .lots(new CompostLot("heap", kg, WorkedSeason.FIRST))
                .field("A", 10);
    }
}

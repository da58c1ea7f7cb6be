package freshfurrow.app.season;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.example.ExampleSeason;
import org.junit.jupiter.api.Test;

final class LoadRoomTest {
    private final LoadRoom room = new LoadRoom(ExampleSeason.season(), 0, 0, 0);

    @Test
    void theLargestLoadFillsTheTankAndHasRoom() {
        // 2,000 L at 200 L/ha are 10 ha
        assertThat(room.largestHa()).isEqualTo(10);
        assertThat(room.load(10).hasRoom()).isTrue();
    }

    @Test
    void aLoadOfAThousandthMoreThanATankIsNotTooLarge() {
        assertThat(room.load(10.009).overTank()).isFalse();
        assertThat(room.load(10.02).overTank()).isTrue();
        assertThat(room.load(10.02).overNurseTank()).isFalse();
    }

    @Test
    void aLoadThatIsPlantedTooLateSaysByHowMuch() {
        // 80 kg: 5 x 900 s + 4 x 180 s = 5220 s; 360 s + 8000 L / 2.5 L/s = 3560 s; 20,000 s; use by 900 s + 18,000 s
        assertThat(room.load(40).pastHoldS()).isEqualTo(5_220 + 3_560 + 20_000 - 18_900);
        assertThat(room.load(10).pastHoldS()).isZero();
    }

    @Test
    void aVolumeServesAnArea() {
        assertThat(room.areaHaOf(1_000)).isEqualTo(5);
    }
}

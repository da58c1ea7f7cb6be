package freshfurrow.solver.lived;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.plan.PlanStart.Planted;
import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.GroundRecord;
import freshfurrow.model.timeline.CompiledSeason;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RainInTheMiddleOfALoadTest {
    private static final Map<Integer, Integer> FROM_EIGHT_FOR_TWO_DAYS = Map.of(0, 8 * TwoFields.HOUR_S, 1, 0);

    @TempDir
    private Path folder = Path.of("");

    @Test
    void theRestOfTheLoadGoesIntoTheFieldThatStaysDry() throws IOException {
        LivedSpring lived = live(Map.of(Drainage.POOR, FROM_EIGHT_FOR_TWO_DAYS));

        // A from 07:08:20 to 08:00 is 3,100 s = 3.1 ha; 1.9 ha of the load go into B, and 8.1 ha follow in 2 loads of 5
        // and 3.1 ha
        assertThat(plantedHa(lived, "A", 0)).isCloseTo(3.1, within(1e-6));
        assertThat(plantedHa(lived, "B", 0)).isCloseTo(10, within(1e-6));
        // on Wednesday A is dry again: 6.9 ha in 2 loads, two days late
        assertThat(plantedHa(lived, "A", 2)).isCloseTo(6.9, within(1e-6));
        assertThat(lived.figures().fills()).isEqualTo(5);
        assertThat(lived.figures().dumpedKg()).isZero();
        assertThat(lived.figures().lateHaDays()).isCloseTo(13.8, within(1e-5));
        assertThat(lived.figures().unservedHa()).isZero();
    }

    @Test
    void theRestOfTheLoadIsLetOutWhereAllIsWet() throws IOException {
        LivedSpring lived =
                live(Map.of(Drainage.POOR, FROM_EIGHT_FOR_TWO_DAYS, Drainage.WELL, FROM_EIGHT_FOR_TWO_DAYS));

        // 1.9 ha x 10 kg/ha; the batch for the second load would be begun at 08:16:40 only
        assertThat(lived.figures().dumpedKg()).isCloseTo(19, within(0.01));
        assertThat(lived.figures().compostKg()).isCloseTo(219, within(0.01));
        assertThat(plantedHa(lived, "A", 0)).isCloseTo(3.1, within(1e-6));
        assertThat(plantedHa(lived, "A", 2)).isCloseTo(6.9, within(1e-6));
        assertThat(plantedHa(lived, "B", 2)).isCloseTo(10, within(1e-6));
    }

    @Test
    void aForecastOfTheRainKeepsTheLoadFromBeingMadeTooLarge() throws IOException {
        GroundRecord ground =
                TwoFields.wet(Map.of(Drainage.POOR, FROM_EIGHT_FOR_TWO_DAYS, Drainage.WELL, FROM_EIGHT_FOR_TWO_DAYS));
        LivedSpring lived = life(1).live(ground, 1);

        // the search for the size may stop 1/256 of a tank below the true one: 0.02 ha
        assertThat(plantedHa(lived, "A", 0)).isBetween(3.0, 3.3);
        assertThat(lived.figures().dumpedKg()).isLessThan(1);
    }

    @Test
    void whatIsLeftWhenItStaysWetIsNotPlanted() throws IOException {
        Map<Integer, Integer> always = Map.of(0, 8 * TwoFields.HOUR_S, 1, 0, 2, 0, 3, 0, 4, 0);
        LivedSpring lived = live(Map.of(Drainage.POOR, always, Drainage.WELL, always));

        assertThat(lived.figures().unservedHa()).isCloseTo(16.9, within(1e-5));
        assertThat(lived.figures().finishS()).isEqualTo(5 * 86_400);
        assertThat(lived.figures().insideWindows()).isFalse();
    }

    private LivedSpring live(Map<Drainage, Map<Integer, Integer>> wet) throws IOException {
        return life(0).live(TwoFields.wet(wet), 1);
    }

    private SpringLife life(int forecastDays) throws IOException {
        CompiledSeason season = CompiledSeason.of(TwoFields.season(folder));
        return new SpringLife(
                season, PlantingOrders.withExtract(List.of(List.of("A", "B"))), forecastDays, Optional.empty());
    }

    private static double plantedHa(LivedSpring lived, String field, int day) {
        return lived.done().planted().stream()
                .filter(part -> part.field().equals(field) && part.date().equals(TwoFields.FIRST.plusDays(day)))
                .mapToDouble(Planted::areaHa)
                .sum();
    }
}

package freshfurrow.solver.bounds;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.season.ExtractAt;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Fewest fills and water trips against arithmetic done by hand. */
class FewestRefillsTest {
    /**
     * Mix keeps for 7,200 s less 720 s in reserve: 6,480 s. A hectare takes 1,000 s to plant and 25 s to pump, a setup 60 s. One batch of 20 kg is for
     * 10 ha; so a mix is for two loads of (6,480 - 2 x 60) / 1,025 = 6.20 ha, not for the 8 ha of the nurse tank: 16 ha are three trips, not two.
     */
    @Test
    void aMixMadeAtTheWaterIsNoLargerThanThePlanterPlantsInTime() {
        Season season = eightFields();

        assertThat(waterTrips(season, ExtractAt.FIELD, 20)).isEqualTo(2);
        assertThat(waterTrips(season, ExtractAt.WATER, 20)).isEqualTo(3);
    }

    /** Batches for 2 ha each: up to 6 ha two follow the oldest, 1,200 s. That leaves (6,480 - 1,200 - 2 x 60) / 1,025 = 5.03 ha: four trips. */
    @Test
    void theOldestBatchWaitsForTheOthers() {
        assertThat(waterTrips(eightFields(), ExtractAt.WATER, 4)).isEqualTo(4);
    }

    /** The drive of 10,000 m at 10 m/s leaves (6,480 - 1,000 - 2 x 60) / 1,025 = 5.23 ha: four trips, where it was three. */
    @Test
    void theDriveTakesOfTheHoldTime() {
        TwoFieldsADay fields = new TwoFieldsADay(1).farFromWater(10_000);
        IntStream.range(0, 8).forEach(i -> fields.field(0, 9, 1));
        Season season = fields.season(10);
        Season roomy = season.change()
                .rigs(season.rigs().stream()
                        .map(rig -> rig.change().nurseTankL(800).rig())
                        .toList())
                .season();

        assertThat(waterTrips(roomy, ExtractAt.WATER, 20)).isEqualTo(4);
    }

    private static Season eightFields() {
        TwoFieldsADay fields = new TwoFieldsADay(1);
        IntStream.range(0, 8).forEach(i -> fields.field(0, 9, 1));
        return fields.season(10);
    }

    private static int waterTrips(Season season, ExtractAt where, double batchCompostKg) {
        return new FewestRefills(CompiledSeason.of(season.change()
                        .recipes(List.of(season.recipe("standard").withReserveS(720)))
                        .rigs(season.rigs().stream()
                                .map(rig -> rig.change()
                                        .extractAt(where)
                                        .batchCompostKg(batchCompostKg)
                                        .rig())
                                .toList())
                        .season()))
                .waterTrips(0);
    }
}

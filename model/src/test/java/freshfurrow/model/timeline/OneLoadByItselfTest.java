package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Season;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class OneLoadByItselfTest {
    @Test
    void aLoadOfThreeBatchesIsWorkedOutByHand() {
        // 4 ha: 800 L and 40 kg, in three alike batches, each 5/6 of 16 kg: 750 + 180 + 750 + 180 + 750 s.
        // 300 s + 800 L / 2 L/s; 4 ha in 4000 s; old 750 s + 5 h after the start.
        Season season = new WorkedSeason()
                .rig("R1", rig -> rig.batchCompost(16))
                .field("A", 4)
                .season();

        OneLoad load = OneLoad.forArea(CompiledSeason.of(season), 0, 0, 0, 4);

        assertThat(load)
                .isEqualTo(new OneLoad(
                        4,
                        800,
                        40,
                        List.of(
                                new OneLoad.DrumBatch(13.333, 133.333, 750),
                                new OneLoad.DrumBatch(13.334, 133.333, 750),
                                new OneLoad.DrumBatch(13.333, 133.333, 750)),
                        2610,
                        180,
                        18_750,
                        700,
                        4000));
    }

    @Test
    void anAreaIsTheLargestThatAVolumeServes() {
        CompiledSeason season =
                CompiledSeason.of(new WorkedSeason().field("A", 4).season());

        assertThat(OneLoad.areaHaOf(season, 0, 800)).isEqualTo(4);
        assertThat(OneLoad.areaHaOf(season, 0, 0)).isZero();
    }

    /** Montana State University Extension, MT 2000-14: 300 gal at 40 gal/ac serve 7.5 ac. */
    @Test
    void aTankServesThePrintedArea() {
        double litresPerGallon = 3.785411784;
        double hectaresPerAcre = 0.40468564224;
        CompiledSeason season = CompiledSeason.of(new WorkedSeason()
                .recipe("standard", 40 * litresPerGallon / hectaresPerAcre, 1, 18_000)
                .field("A", 4)
                .season());

        assertThat(OneLoad.areaHaOf(season, 0, 300 * litresPerGallon) / hectaresPerAcre)
                .isCloseTo(7.5, within(1e-4));
    }

    @Property(tries = 200)
    void theLoadIsThatOfAPlanOfOneField(
            @ForAll @DoubleRange(min = 0.05, max = 5) double areaHa,
            @ForAll @DoubleRange(min = 7, max = 60) double batchKg) {
        WorkedPlan worked = new WorkedSeason()
                .rig("R1", rig -> rig.batchCompost(batchKg))
                .planter("P1", planter -> planter.unfoldedAt("A").hours("09:00/19:00"))
                .field("A", areaHa)
                .plan("A");
        Plan plan = worked.plan();
        Plan.Load planned = plan.loads().get(0);
        LocalDateTime start = plan.batches().get(0).start();

        OneLoad load = OneLoad.forArea(CompiledSeason.of(worked.season()), 0, 0, 0, areaHa);

        assertThat(plan.loads()).hasSize(1);
        assertThat(load.mixL()).isEqualTo(planned.litres());
        assertThat(load.compostKg()).isCloseTo(plan.totals().compostKg(), within(1e-3));
        assertThat(load.batches().stream().map(OneLoad.DrumBatch::compostKg))
                .isEqualTo(plan.batches().stream().map(Plan.Batch::compostKg).toList());
        assertThat(load.batches().stream().map(OneLoad.DrumBatch::waterL))
                .isEqualTo(plan.batches().stream().map(Plan.Batch::waterL).toList());
        Plan.Batch last = plan.batches().get(plan.batches().size() - 1);
        assertThat(load.drumS()).isEqualTo(seconds(start, last.end()));
        assertThat(load.useByS()).isEqualTo(seconds(start, planned.deadline()));
        List<Activity> activities = plan.planters().get("P1").activities();
        assertThat(activities).anySatisfy(activity -> assertThat(activity)
                .isInstanceOfSatisfying(Activity.Fill.class, fill -> assertThat(load.transferS())
                        .isEqualTo(seconds(fill.start(), fill.end()))));
        assertThat(activities).anySatisfy(activity -> assertThat(activity)
                .isInstanceOfSatisfying(Activity.Plant.class, plant -> assertThat(load.plantS())
                        .isEqualTo(seconds(plant.start(), plant.end()))));
    }

    private static long seconds(LocalDateTime from, LocalDateTime to) {
        return Duration.between(from, to).toSeconds();
    }
}

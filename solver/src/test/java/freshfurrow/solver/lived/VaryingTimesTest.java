package freshfurrow.solver.lived;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.compare.SpringFigures;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.PlanStart;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.season.RandomSpreads;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.TimeSpread;
import freshfurrow.model.season.TimeSpread.Breakdowns;
import freshfurrow.model.timeline.CompiledSeason;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Springs in which rain comes between and times vary, with and without new plans on the way. */
class VaryingTimesTest {
    private static final TimeSpread NOTHING_HAPPENS = new TimeSpread(0, 0, 0, 0, Optional.of(new Breakdowns(1e12, 60)));

    @Property(tries = 100)
    void whereNothingVariesSpringsAreLivedAsWithout(@ForAll long seed) {
        Season season = season(seed);

        assertThat(lived(with(season, NOTHING_HAPPENS), seed).figures())
                .isEqualTo(lived(season, seed).figures());
    }

    @Property(tries = 200)
    void noMoreIsPlantedOrUsedThanThereIs(@ForAll long seed) {
        Season season = with(season(seed), RandomSpreads.spread(seed));
        LivedSpring lived = lived(season, seed);
        Map<String, Double> plantedHa = new HashMap<>();
        for (PlanStart.Planted planted : lived.done().planted()) {
            plantedHa.merge(planted.field(), planted.areaHa(), Double::sum);
        }
        for (Field field : season.fields()) {
            assertThat(plantedHa.getOrDefault(field.id(), 0.0)).isLessThan(field.areaHa() + 1e-5);
        }
        SpringFigures figures = lived.figures();
        double lotsKg =
                season.compost().stream().mapToDouble(CompostLot::massKg).sum();
        double plantedSum = plantedHa.values().stream().mapToDouble(ha -> ha).sum();
        double allHa = season.fields().stream().mapToDouble(Field::areaHa).sum();

        assertThat(figures.compostKg()).isLessThan(lotsKg + 0.01);
        assertThat(plantedSum + figures.unservedHa()).isCloseTo(allHa, within(1e-4));
        assertThat(figures.staleLoads()).isNotNegative();
    }

    @Property(tries = 100)
    void nothingTooOldIsPlanted(@ForAll long seed) {
        LivedSpring lived = lived(with(season(seed), RandomSpreads.spread(seed)), seed);
        for (LivedSpring.Part part : lived.parts()) {
            part.plan().planters().values().stream()
                    .flatMap(planter -> planter.activities().stream())
                    .filter(Activity.Plant.class::isInstance)
                    .map(Activity.Plant.class::cast)
                    .forEach(plant -> assertThat(part.plan().loads()).anySatisfy(load -> {
                        assertThat(load.id()).isEqualTo(plant.load());
                        assertThat(plant.end()).isBeforeOrEqualTo(load.deadline());
                    }));
        }
    }

    private static LivedSpring lived(Season season, long seed) {
        CompiledSeason dry = SpringPlan.dry(season);
        Optional<Replanning> replanning =
                Math.floorMod(seed, 4) == 0 ? Optional.of(new Replanning(2, 20, seed)) : Optional.empty();
        return new SpringLife(dry, SpringPlan.first(dry).orders(), (int) Math.floorMod(seed, 3L), replanning)
                .live(RandomGround.of(season, 20, seed), seed);
    }

    private static Season season(long seed) {
        return Math.floorMod(seed, 3) == 0 ? RandomSeasons.mixed(seed, 12) : RandomSeasons.season(seed);
    }

    private static Season with(Season season, TimeSpread spread) {
        return season.change().spread(Optional.of(spread)).season();
    }
}

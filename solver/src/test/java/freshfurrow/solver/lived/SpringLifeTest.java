package freshfurrow.solver.lived;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.compare.SpringFigures;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanStart;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.read.Reading;
import freshfurrow.model.read.SeasonFiles;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.GroundRecord;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.PlanRecorder;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SpringLifeTest {
    private static final Season SPRING =
            ((Reading.Valid) SeasonFiles.read(Path.of("../scenarios/spring"), List.of())).season();
    private static final SpringPlan PLAN =
            SpringPlan.first(SpringPlan.dry(SPRING)).improved(3_000, 2, 2);

    @Test
    void aSpringThatStaysDryGoesAsPlanned() {
        Plan plan = PlanRecorder.record(
                PLAN.season(),
                PLAN.orders(),
                new Plan.SeasonSource("spring", "season.yaml", "0".repeat(64), DisplayUnits.US));

        SpringFigures figures = life(0).live(SpringPlan.DRY, 1).figures();

        assertThat(figures.unservedHa()).isEqualTo(plan.totals().unservedHa());
        assertThat(figures.lateHaDays()).isCloseTo(plan.totals().lateHaDays(), within(0.05));
        assertThat(figures.fills()).isEqualTo(plan.totals().planterFills());
        assertThat(figures.waterTrips()).isEqualTo(plan.totals().waterTrips());
        assertThat(figures.waitH()).isCloseTo(plan.totals().waitMin() / 60, within(0.1));
        assertThat(figures.driveKm()).isCloseTo(plan.totals().driveKm(), within(0.1));
        assertThat(figures.compostKg()).isCloseTo(plan.totals().compostKg(), within(0.1));
        assertThat(figures.dumpedKg()).isCloseTo(0, within(0.1));
        assertThat(figures.finishS())
                .isCloseTo(
                        (int) ChronoUnit.SECONDS.between(
                                SPRING.first().atStartOfDay(), plan.totals().finish()),
                        within(60));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 3})
    void nothingIsPlantedInWetGroundNorTwiceNorTooOld(int forecastDays) {
        SpringLife life = life(forecastDays);
        for (int seed = 1; seed <= 20; seed++) {
            GroundRecord ground = RandomGround.of(SPRING, 30, seed);
            LivedSpring lived = life.live(ground, 1);
            GroundDays wet = new GroundDays(SPRING, ground);
            Map<String, Double> plantedHa = new HashMap<>();
            for (LivedSpring.Part part : lived.parts()) {
                for (Plan.PlanterPlan planter : part.plan().planters().values()) {
                    for (Activity activity : planter.activities()) {
                        if (activity instanceof Activity.Plant plant && seconds(plant.start()) < part.untilS()) {
                            int end = Math.min(seconds(plant.end()), part.untilS());
                            assertThat(wetWithin(wet, plant.field(), seconds(plant.start()), end))
                                    .as("spring %d, %s", seed, plant)
                                    .isFalse();
                            assertThat(plant.end()).isBeforeOrEqualTo(deadline(part.plan(), plant.load()));
                        }
                    }
                }
            }
            for (PlanStart.Planted planted : lived.done().planted()) {
                plantedHa.merge(planted.field(), planted.areaHa(), Double::sum);
            }
            for (Field field : SPRING.fields()) {
                assertThat(plantedHa.getOrDefault(field.id(), 0.0)).isLessThan(field.areaHa() + 1e-5);
            }
        }
    }

    @Test
    void aSpringIsLivedTheSameEachTime() {
        SpringLife life = life(0);
        assertThat(life.live(RandomGround.of(SPRING, 30, 7), 1).figures())
                .isEqualTo(life(0).live(RandomGround.of(SPRING, 30, 7), 1).figures());
    }

    private static SpringLife life(int forecastDays) {
        return new SpringLife(PLAN.season(), PLAN.orders(), forecastDays, Optional.empty());
    }

    private static boolean wetWithin(GroundDays ground, String id, int from, int to) {
        Field field = SPRING.fields().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow();
        return ground.wetAt(field.drainage(), from) || ground.wetAt(field.drainage(), to - 1);
    }

    private static LocalDateTime deadline(Plan plan, String id) {
        return plan.loads().stream()
                .filter(load -> load.id().equals(id))
                .findFirst()
                .orElseThrow()
                .deadline();
    }

    private static int seconds(LocalDateTime time) {
        return (int) ChronoUnit.SECONDS.between(SPRING.first().atStartOfDay(), time);
    }
}

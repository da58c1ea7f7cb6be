package freshfurrow.cli.safety;

import static freshfurrow.cli.example.ExamplePlan.at;
import static freshfurrow.cli.example.ExampleSeason.MONDAY;
import static freshfurrow.cli.example.ExampleSeason.TUESDAY;
import static freshfurrow.cli.example.ExampleSeason.WEDNESDAY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.cli.day.PlanIndex;
import freshfurrow.cli.example.ExamplePlan;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.ClockChanges;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

final class HazardsTest {
    /** The rig draws 3,000 L on Monday evening, passes on 1,600 L on Tuesday and 800 L on Wednesday. */
    private static final Plan PLAN = ExamplePlan.plan();

    @Test
    void aRigWeighsTheMostWaterOfItsDayAndTheDaysCompost() {
        // Tuesday begins with 3,000 L x 0.999975 kg/L; one batch of 16 kg
        Hazard.LoadedRig loaded = only(on(TUESDAY), Hazard.LoadedRig.class);
        assertThat(loaded.waterL()).isEqualTo(3_000);
        assertThat(loaded.loadKg()).isCloseTo(2_999.925 + 16, within(1e-6));
        assertThat(loaded.isOverLimit()).isFalse();
    }

    @Test
    void aRigOverItsPayloadComesFirst() {
        // 2,999.925 + 16 kg on a payload of 3,000 kg, and on one of 3,016 kg
        List<Hazard> tooHeavy = new Hazards(new PlanIndex(with(3_000, 13.6))).on(TUESDAY);
        assertThat(tooHeavy.get(0)).isInstanceOf(Hazard.LoadedRig.class);
        assertThat(tooHeavy.get(0).isOverLimit()).isTrue();
        List<Hazard> justAllowed = new Hazards(new PlanIndex(with(3_016, 13.6))).on(TUESDAY);
        assertThat(justAllowed).noneMatch(Hazard::isOverLimit);
    }

    @Test
    void aDayWithoutDrivesHasNoWeightOnTheRoad() {
        assertThat(on(WEDNESDAY)).noneMatch(Hazard.LoadedRig.class::isInstance);
    }

    @Test
    void onlyADriveWithATankNeitherFullNorEmptySurges() {
        // On Monday the rig drives off empty, on Tuesday with all 3,000 L
        assertThat(new Hazards(new PlanIndex(with(4_000, 13.6))).on(MONDAY))
                .noneMatch(Hazard.PartFilledTank.class::isInstance);
        assertThat(new Hazards(new PlanIndex(with(4_000, 13.6))).on(TUESDAY))
                .noneMatch(Hazard.PartFilledTank.class::isInstance);
        Plan larger = withRig(new Plan.RigPlan(
                OptionalDouble.of(3_500),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                PLAN.rigs().get("R1").activities()));
        assertThat(only(new Hazards(new PlanIndex(larger)).on(TUESDAY), Hazard.PartFilledTank.class))
                .isEqualTo(new Hazard.PartFilledTank(List.of(at(TUESDAY, "06:35"))));
    }

    @Test
    void aBucketOverTheLoadConstantIsToldFirst() {
        assertThat(new Hazards(new PlanIndex(with(4_000, 24))).on(TUESDAY).get(0))
                .isEqualTo(new Hazard.Lifting(OptionalDouble.of(24), 16));
    }

    @Test
    void waterIsProtectedWhereItIsDrawn() {
        assertThat(only(on(MONDAY), Hazard.Backflow.class).waterPoints()).containsExactly("well");
        assertThat(on(TUESDAY)).noneMatch(Hazard.Backflow.class::isInstance);
    }

    @Test
    void extractionTransferAndPlantingHaveTheirHazards() {
        assertThat(on(TUESDAY))
                .contains(new Hazard.DustAndMist(), new Hazard.Pressure(), new Hazard.OldMix(), new Hazard.FoodCrop());
        assertThat(on(MONDAY)).doesNotContain(new Hazard.DustAndMist(), new Hazard.OldMix());
    }

    @Test
    void theRoadIsToldOnceADayHoweverManyMachinesDrive() {
        // On Tuesday the planter drives with an empty tank, both rigs with 3,000 L in tanks of 3,500 L
        Plan.RigPlan rig = new Plan.RigPlan(
                OptionalDouble.of(3_500),
                OptionalDouble.empty(),
                OptionalDouble.of(13.6),
                PLAN.rigs().get("R1").activities());
        List<Hazard> tuesday = new Hazards(new PlanIndex(withRigs(Map.of("R1", rig, "R2", rig)))).on(TUESDAY);
        assertThat(tuesday).doesNotContain(new Hazard.OnTheRoad());
        assertThat(only(tuesday, Hazard.PartFilledTank.class).starts()).containsExactly(at(TUESDAY, "06:35"));
        assertThat(only(tuesday, Hazard.Lifting.class).compostKg()).isEqualTo(32);
        assertThat(tuesday.stream().filter(Hazard.LoadedRig.class::isInstance)).hasSize(2);
    }

    @Test
    void waterPointsOfAllRigsStandInOneCaution() {
        Plan.RigPlan other = new Plan.RigPlan(List.of(
                new Activity.Draw(at(MONDAY, "16:10"), at(MONDAY, "16:40"), "pond", 1_000),
                new Activity.Draw(at(MONDAY, "17:10"), at(MONDAY, "17:40"), "well", 1_000)));
        Map<String, Plan.RigPlan> rigs = new TreeMap<>(PLAN.rigs());
        rigs.put("R2", other);
        assertThat(only(new Hazards(new PlanIndex(withRigs(rigs))).on(MONDAY), Hazard.Backflow.class)
                        .waterPoints())
                .containsExactly("well", "pond");
    }

    @Test
    void aChangeOfClocksIsAHazardOfTheWorkWithLoadsThatCrossIt() {
        // Tuesday's load is made at 07:00 and keeps until 12:00; clocks go back from 09:00 to 08:00, then from 13:00 to
        // 12:30
        ClockChanges.Change crossed = new ClockChanges.Change(at(TUESDAY, "09:00"), at(TUESDAY, "08:00"));
        ClockChanges.Change later = new ClockChanges.Change(at(TUESDAY, "13:00"), at(TUESDAY, "12:30"));
        Hazards hazards = new Hazards(new PlanIndex(ExamplePlan.withClockChanges(List.of(crossed, later))));
        assertThat(only(hazards.on(TUESDAY), Hazard.ClockChange.class)).isEqualTo(new Hazard.ClockChange(crossed));
        assertThat(hazards.on(MONDAY)).doesNotHaveAnyElementsOfTypes(Hazard.ClockChange.class);
        assertThat(hazards.on(TUESDAY.plusDays(1))).doesNotHaveAnyElementsOfTypes(Hazard.ClockChange.class);
    }

    @Test
    void aDayWithoutWorkHasNone() {
        assertThat(on(MONDAY.minusDays(1))).isEmpty();
    }

    private static List<Hazard> on(LocalDate date) {
        return new Hazards(new PlanIndex(PLAN)).on(date);
    }

    private static Plan with(double payloadKg, double bucketKg) {
        return withRig(new Plan.RigPlan(
                OptionalDouble.of(3_000),
                OptionalDouble.of(payloadKg),
                OptionalDouble.of(bucketKg),
                PLAN.rigs().get("R1").activities()));
    }

    private static Plan withRig(Plan.RigPlan rig) {
        return withRigs(Map.of("R1", rig));
    }

    private static Plan withRigs(Map<String, Plan.RigPlan> rigs) {
        return new Plan(
                PLAN.season(),
                PLAN.score(),
                PLAN.totals(),
                PLAN.planters(),
                rigs,
                PLAN.loads(),
                PLAN.batches(),
                PLAN.unserved(),
                PLAN.bounds(),
                PLAN.limits());
    }

    private static <T extends Hazard> T only(List<Hazard> hazards, Class<T> kind) {
        List<T> found =
                hazards.stream().filter(kind::isInstance).map(kind::cast).toList();
        assertThat(found).hasSize(1);
        return found.get(0);
    }
}

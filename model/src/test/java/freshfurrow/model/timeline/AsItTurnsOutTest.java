package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.season.RandomSpreads;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.TimeSpread;
import freshfurrow.model.season.TimeSpread.Breakdowns;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** What holds however long things take. */
class AsItTurnsOutTest {
    private static final int MOST_FIELDS = 25;

    /** Breakdowns so rare that there is none, and no other spread: all of the way that actual times go, but for the times. */
    private static final TimeSpread NOTHING_HAPPENS = new TimeSpread(0, 0, 0, 0, Optional.of(new Breakdowns(1e12, 60)));

    @Property(tries = 300)
    void whereNothingVariesAllGoesAsPlanned(@ForAll long seed) {
        Season season = season(seed);
        PlantingOrders orders = RandomSeasons.orders(season, RandomSeasons.lists(season, seed));

        assertThat(turnsOut(season, orders, NOTHING_HAPPENS, seed))
                .isEqualTo(PlanRecorder.record(CompiledSeason.of(season), orders, source(season)));
    }

    @Property(tries = 300)
    void noMachineDoesTwoThingsAtOnce(@ForAll long seed) {
        Plan plan = played(seed);
        Stream.concat(
                        plan.planters().values().stream().map(Plan.PlanterPlan::activities),
                        plan.rigs().values().stream().map(Plan.RigPlan::activities))
                .forEach(AsItTurnsOutTest::isOneAfterTheOther);
    }

    /** What days begin and end with is laid by the hours of the plan, whatever turns out. */
    private static void isOneAfterTheOther(List<Activity> all) {
        List<Activity> activities = all.stream()
                .filter(activity -> !(activity instanceof Activity.SetUp
                        || activity instanceof Activity.CloseUp
                        || activity instanceof Activity.Flush))
                .toList();
        for (int i = 1; i < activities.size(); i++) {
            assertThat(activities.get(i).start())
                    .as("%s before %s", activities.get(i - 1), activities.get(i))
                    .isAfterOrEqualTo(activities.get(i - 1).end());
        }
    }

    @Property(tries = 300)
    void nothingTooOldIsPlanted(@ForAll long seed) {
        Plan plan = played(seed);
        Map<String, Plan.Load> loads = plan.loads().stream().collect(Collectors.toMap(Plan.Load::id, load -> load));
        plants(plan).forEach(plant -> assertThat(plant.end())
                .isBeforeOrEqualTo(loads.get(plant.load()).deadline()));
    }

    @Property(tries = 300)
    void everyPieceOfAFieldIsPlantedOrUnserved(@ForAll long seed) {
        Season season = season(seed);
        Plan plan = played(season, seed);
        Map<String, Double> ha = new HashMap<>();
        plan.planters().values().stream()
                .flatMap(planter -> planter.activities().stream())
                .filter(Activity.Planting.class::isInstance)
                .map(Activity.Planting.class::cast)
                .forEach(piece -> ha.merge(piece.field(), piece.areaHa(), Double::sum));
        plan.unserved().forEach(left -> ha.merge(left.field(), left.areaHa(), Double::sum));
        for (Field field : season.fields()) {
            assertThat(ha.get(field.id())).isCloseTo(field.areaHa(), within(2e-6));
        }
    }

    @Property(tries = 300)
    void allCompostThatIsExtractedIsPlantedOrLetOut(@ForAll long seed) {
        Season season = season(seed);
        Plan plan = played(season, seed);
        double extractedKg =
                plan.batches().stream().mapToDouble(Plan.Batch::compostKg).sum();
        double lotsKg =
                season.compost().stream().mapToDouble(CompostLot::massKg).sum();
        double appliedKg = plants(plan)
                .mapToDouble(plant -> plant.areaHa()
                        * season.recipe(season.field(plant.field()).recipe()).compostKgPerHa())
                .sum();

        assertThat(extractedKg).isLessThanOrEqualTo(lotsKg + 1e-3);
        assertThat(appliedKg).isLessThanOrEqualTo(extractedKg * 1.0011 + 0.02);
        if (plan.totals().dumpedL() == 0) {
            assertThat(extractedKg)
                    .isCloseTo(
                            appliedKg,
                            within(0.002 * appliedKg + 0.001 * plan.batches().size() + 0.02));
        }
    }

    @Property(tries = 300)
    void aPlanterIsFilledWhileTheRigTransfers(@ForAll long seed) {
        Plan plan = played(seed);
        Map<String, Activity> transfers = plan.rigs().values().stream()
                .flatMap(rig -> rig.activities().stream())
                .filter(Activity.Transfer.class::isInstance)
                .collect(Collectors.toMap(activity -> ((Activity.Transfer) activity).load(), activity -> activity));
        plan.planters().values().stream()
                .flatMap(planter -> planter.activities().stream())
                .filter(Activity.Fill.class::isInstance)
                .map(Activity.Fill.class::cast)
                .forEach(fill -> {
                    assertThat(transfers.get(fill.load()).start()).isEqualTo(fill.start());
                    assertThat(transfers.get(fill.load()).end()).isEqualTo(fill.end());
                    assertThat(transfers.get(fill.load()).at()).isEqualTo(fill.at());
                });
    }

    @Property(tries = 100)
    void theSameNumberTurnsOutTheSame(@ForAll long seed) {
        Season season = season(seed);
        assertThat(played(season, seed)).isEqualTo(played(season, seed));
    }

    private static Stream<Activity.Plant> plants(Plan plan) {
        return plan.planters().values().stream()
                .flatMap(planter -> planter.activities().stream())
                .filter(Activity.Plant.class::isInstance)
                .map(Activity.Plant.class::cast);
    }

    private static Season season(long seed) {
        return Math.floorMod(seed, 3) == 0
                ? RandomSeasons.mixed(seed, MOST_FIELDS)
                : RandomSeasons.season(seed, MOST_FIELDS);
    }

    private static Plan played(long seed) {
        return played(season(seed), seed);
    }

    private static Plan played(Season season, long seed) {
        PlantingOrders orders = RandomSeasons.orders(season, RandomSeasons.lists(season, seed));
        return turnsOut(season, orders, RandomSpreads.spread(seed), seed);
    }

    private static Plan turnsOut(Season season, PlantingOrders orders, TimeSpread spread, long number) {
        Season uncertain = season.change().spread(Optional.of(spread)).season();
        return PlanRecorder.recordAsItTurnsOut(
                CompiledSeason.of(uncertain), orders, source(season), Optional.empty(), number);
    }

    private static Plan.SeasonSource source(Season season) {
        return Plan.SeasonSource.of(season, "season.yaml", "0".repeat(64));
    }
}

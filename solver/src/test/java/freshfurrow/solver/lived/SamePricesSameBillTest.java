package freshfurrow.solver.lived;

import static freshfurrow.model.quantity.Factors.DAY_S;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.plan.Bill;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanStart;
import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.progress.StandingAt;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.season.CostItem;
import freshfurrow.model.season.Costs;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.season.RandomSpreads;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** A plan's own bill, from the counters of the timeline, and that of the same spring compared, from what machines do. */
class SamePricesSameBillTest {
    private static final Plan.SeasonSource SOURCE =
            new Plan.SeasonSource("bill", "", "0".repeat(64), DisplayUnits.METRIC);

    /** Prices that tell all amounts apart. */
    private static final Costs PRICES =
            new Costs(Optional.empty(), 24, 14, 0.37, 0.18, 9.9, 740, 55, 0.003, 51, Map.of("R0", 5_000.0));

    @Property(tries = 300)
    void ofPlanters(@ForAll long seed) {
        same(RandomSeasons.season(seed, 20), seed);
    }

    @Property(tries = 200)
    void ofPlantersAndSprayers(@ForAll long seed) {
        same(RandomSeasons.mixed(seed, 15), seed);
    }

    @Property(tries = 200)
    void ofSprayersThatAreMountedOnRigs(@ForAll long seed) {
        same(RandomSeasons.withMounted(seed, 15), seed);
    }

    @Property(tries = 200)
    void whereFieldsGoWithoutExtract(@ForAll long seed) {
        same(RandomSeasons.goingWithout(RandomSeasons.season(seed, 15), new Random(seed)), seed);
    }

    /** From a moment on at which machines stand somewhere, with something in their tanks and lines. */
    @Property(tries = 300)
    void ofTheRestOfASeason(@ForAll long seed) {
        Season season = priced(seed % 2 == 0 ? RandomSeasons.season(seed, 15) : RandomSeasons.withMounted(seed, 15));
        PlantingOrders orders = RandomSeasons.orders(season, RandomSeasons.lists(season, seed));
        int now = new Random(seed).nextInt(season.days() * DAY_S);
        Plan whole = PlanRecorder.record(CompiledSeason.of(season), orders, SOURCE);
        PlanStart start = StandingAt.of(season, whole, season.time().at(now));
        Season left = start.remaining(season);
        List<String> ids = left.fields().stream().map(Field::id).toList();
        PlantingOrders ordersLeft = orders.with(orders.byPlanter().stream()
                .map(list -> list.stream().filter(ids::contains).toList())
                .toList());
        Plan rest = PlanRecorder.record(CompiledSeason.of(left), ordersLeft, SOURCE, start);
        SpringTally tally = new SpringTally(CompiledSeason.of(season));
        int end = season.days() * DAY_S;
        tally.add(rest, end, StandingAt.of(left, rest, season.time().at(end)));

        Map<CostItem, Double> amounts = amounts(rest);
        assertThat(tally.figures(StandingAt.of(left, rest, season.time().at(end)))
                        .workH())
                .as("hours at work")
                .isCloseTo(amounts.get(CostItem.WORK), within(1e-5));
        assertThat(tally.overtimeH()).as("overtime").isCloseTo(amounts.get(CostItem.OVERTIME), within(1e-5));
        assertThat(tally.waterL()).as("water").isCloseTo(amounts.get(CostItem.WATER), within(1e-3));
    }

    /** What machines did while times varied and machines broke down, with planting past the hours of days. */
    @Property(tries = 300)
    void whereTimesVary(@ForAll long seed) {
        Season season =
                switch (Math.floorMod(seed, 3)) {
                    case 0 -> RandomSeasons.withMounted(seed, 15);
                    case 1 -> RandomSeasons.goingWithout(RandomSeasons.season(seed, 15), new Random(seed));
                    default -> RandomSeasons.mixed(seed, 15);
                };
        Season priced = priced(season)
                .change()
                .spread(Optional.of(RandomSpreads.spread(seed)))
                .season();
        CompiledSeason compiled = CompiledSeason.of(priced);
        PlantingOrders orders = RandomSeasons.orders(priced, RandomSeasons.lists(priced, seed));
        same(priced, PlanRecorder.recordAsItTurnsOut(compiled, orders, SOURCE, Optional.empty(), seed));
    }

    private static Map<CostItem, Double> amounts(Plan plan) {
        Map<CostItem, Double> amounts = new EnumMap<>(CostItem.class);
        plan.totals().bill().orElseThrow().lines().forEach(line -> amounts.put(line.item(), line.amount()));
        return amounts;
    }

    private static Season priced(Season season) {
        return season.change()
                .goals(season.goals().withByMoney(Optional.of(PRICES)))
                .season();
    }

    private static void same(Season season, long seed) {
        Season priced = priced(season);
        PlantingOrders orders = RandomSeasons.orders(priced, RandomSeasons.lists(priced, seed));
        same(priced, PlanRecorder.record(CompiledSeason.of(priced), orders, SOURCE));
    }

    private static void same(Season priced, Plan plan) {
        // a rig that broke down may let its mix out after the season's last midnight, which the timeline counts
        int end = (priced.days() + 30) * DAY_S;
        SpringTally tally = new SpringTally(CompiledSeason.of(priced));
        tally.add(plan, end, StandingAt.of(priced, plan, priced.time().at(end)));
        LivedSpring lived = new LivedSpring(
                tally.figures(StandingAt.of(priced, plan, priced.time().at(end))),
                tally.waterL(),
                tally.overtimeH(),
                List.of(),
                StandingAt.of(priced, plan, priced.time().at(end)));
        Bill bill = plan.totals().bill().orElseThrow();

        Map<CostItem, Double> amounts = amounts(plan);
        assertThat(lived.figures().workH()).as("hours at work").isCloseTo(amounts.get(CostItem.WORK), within(1e-5));
        assertThat(lived.overtimeH()).as("overtime").isCloseTo(amounts.get(CostItem.OVERTIME), within(1e-5));
        assertThat(lived.waterL()).as("water").isCloseTo(amounts.get(CostItem.WATER), within(1e-3));
        assertThat(lived.at(PRICES).runningCost().orElseThrow()).isCloseTo(bill.sum(), within(0.1));
        assertThat(-plan.score().medium() / 1e6).isCloseTo(bill.sum(), within(0.05));
    }
}

package freshfurrow.model.audit;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.plan.Bill;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanStart;
import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.progress.StandingAt;
import freshfurrow.model.season.Costs;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.UnaryOperator;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** The bill of a plan against its activities. */
class PricesTest {
    private static final Costs PRICES =
            new Costs(Optional.of("EUR"), 24, 14, 0.37, 0.18, 9.9, 740, 55, 0.003, 51, Map.of());

    @Property(tries = 200)
    void aBillIsWhatThePlanComesTo(@ForAll long seed) {
        findsNothing(RandomSeasons.season(seed, 20), seed);
    }

    @Property(tries = 200)
    void aBillIsWhatAPlanWithMountedSprayersComesTo(@ForAll long seed) {
        findsNothing(RandomSeasons.withMounted(seed, 15), seed);
    }

    @Property(tries = 200)
    void aBillIsWhatAPlanWithFieldsWithoutExtractComesTo(@ForAll long seed) {
        findsNothing(RandomSeasons.goingWithout(RandomSeasons.season(seed, 15), new Random(seed)), seed);
    }

    @Property(tries = 200)
    void theBillOfTheRestOfASeasonIsWhatTheRestComesTo(@ForAll long seed) {
        Season season = priced(seed % 2 == 0 ? RandomSeasons.season(seed, 15) : RandomSeasons.withMounted(seed, 15));
        PlantingOrders orders = RandomSeasons.orders(season, RandomSeasons.lists(season, seed));
        Plan whole = PlanRecorder.record(CompiledSeason.of(season), orders, source(season));
        int now = new Random(seed).nextInt(season.days() * 86_400);
        PlanStart start = StandingAt.of(season, whole, season.time().at(now));
        Season left = start.remaining(season);
        List<String> ids = left.fields().stream().map(Field::id).toList();
        Plan rest = PlanRecorder.record(
                CompiledSeason.of(left),
                orders.with(orders.byPlanter().stream()
                        .map(list -> list.stream().filter(ids::contains).toList())
                        .toList()),
                source(season),
                start);

        assertThat(bill(left, rest)).isEmpty();
    }

    @Example
    void aWrongLineIsFound() {
        Season season = priced(RandomSeasons.season(5, 15));
        Plan plan = record(season, 5);
        int lines = plan.totals().bill().orElseThrow().lines().size();
        assertThat(lines).isEqualTo(8);

        for (int i = 0; i < lines; i++) {
            int at = i;
            String key = "bill."
                    + plan.totals().bill().orElseThrow().lines().get(i).item().key();
            assertThat(bill(
                            season,
                            with(
                                    plan,
                                    at,
                                    line -> new Bill.Line(line.item(), line.amount() + 1, line.price(), line.cost()))))
                    .as(key)
                    .singleElement()
                    .asString()
                    .contains(key, "amount");
            assertThat(bill(
                            season,
                            with(
                                    plan,
                                    at,
                                    line -> new Bill.Line(
                                            line.item(), line.amount(), line.price() + 1e-5, line.cost()))))
                    .singleElement()
                    .asString()
                    .contains(key, "price");
            assertThat(bill(
                            season,
                            with(
                                    plan,
                                    at,
                                    line -> new Bill.Line(line.item(), line.amount(), line.price(), line.cost() + 1))))
                    .singleElement()
                    .asString()
                    .contains(key, "cost");
        }
    }

    @Example
    void aLineTooFewAndAnotherCurrencyAreFound() {
        Season season = priced(RandomSeasons.season(5, 15));
        Plan plan = record(season, 5);
        Bill bill = plan.totals().bill().orElseThrow();

        assertThat(bill(
                        season,
                        with(
                                plan,
                                Optional.of(
                                        new Bill(bill.currency(), bill.lines().subList(1, 8))))))
                .hasSize(1);
        assertThat(bill(season, with(plan, Optional.of(new Bill(Optional.of("USD"), bill.lines())))))
                .hasSize(1);
        assertThat(bill(season, with(plan, Optional.empty()))).hasSize(1);
    }

    @Example
    void aPlanThatIsNotJudgedByMoneyHasNone() {
        Season season = RandomSeasons.season(5, 15);
        Plan plan = record(season, 5);

        assertThat(bill(season, with(plan, Optional.of(Bill.of(PRICES, item -> 0)))))
                .hasSize(1);
    }

    private static void findsNothing(Season season, long seed) {
        Season priced = priced(season);

        assertThat(Audit.check(priced, record(priced, seed))).isEmpty();
    }

    private static Plan.SeasonSource source(Season season) {
        return Plan.SeasonSource.of(season, "season.yaml", "0".repeat(64));
    }

    private static Season priced(Season season) {
        return season.change()
                .goals(season.goals().withByMoney(Optional.of(PRICES)))
                .season();
    }

    private static Plan record(Season season, long seed) {
        return PlanRecorder.record(
                CompiledSeason.of(season),
                RandomSeasons.orders(season, RandomSeasons.lists(season, seed)),
                source(season));
    }

    private static List<String> bill(Season season, Plan plan) {
        return Audit.check(season, plan).stream()
                .filter(finding -> finding.rule() == Rule.BILL)
                .map(Object::toString)
                .toList();
    }

    private static Plan with(Plan plan, int line, UnaryOperator<Bill.Line> change) {
        Bill bill = plan.totals().bill().orElseThrow();
        List<Bill.Line> lines = new ArrayList<>(bill.lines());
        lines.set(line, change.apply(lines.get(line)));
        return with(plan, Optional.of(new Bill(bill.currency(), lines)));
    }

    private static Plan with(Plan plan, Optional<Bill> bill) {
        Plan.Totals totals = plan.totals();
        return new Plan(
                plan.season(),
                plan.score(),
                new Plan.Totals(
                        totals.areaHa(),
                        totals.untreatedHa(),
                        totals.unservedHa(),
                        totals.lateHaDays(),
                        totals.planterFills(),
                        totals.waterTrips(),
                        totals.compostTrips(),
                        totals.batches(),
                        totals.compostKg(),
                        totals.dumpedL(),
                        totals.waitMin(),
                        totals.idleMin(),
                        totals.overtimeMin(),
                        totals.driveKm(),
                        totals.smallestMarginMin(),
                        totals.finish(),
                        bill),
                plan.planters(),
                plan.rigs(),
                plan.loads(),
                plan.batches(),
                plan.unserved(),
                plan.bounds(),
                plan.limits(),
                plan.start());
    }
}

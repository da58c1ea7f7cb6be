package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Chances;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.TimeSpread;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;

/** The chances that a plan states, against seasons that were not simulated to state them. */
class PlanChancesTest {
    private static final int STATED = 400;
    private static final int UNSEEN = 400;
    private static final long FIRST_UNSEEN = 1_000_000;
    private static final double LEAST_STALE_HA = 0.01;

    /** Half of the variance of what is seen is that of what is stated: of a difference of two shares of as many seasons. */
    private static final double TWO_SIDED_95 = 1.96;

    @Test
    void statedChancesHoldInUnseenSeasons() {
        int inside = 0;
        int all = 0;
        for (long seed = 1; seed <= 25; seed++) {
            Season season = uncertain(RandomSeasons.season(seed, 12));
            PlantingOrders orders = RandomSeasons.orders(season, RandomSeasons.lists(season, seed));
            CompiledSeason compiled = CompiledSeason.of(season);
            Plan plan = PlanRecorder.record(compiled, orders, source(season));
            Chances stated = chances(compiled, plan, 1, STATED);
            Map<String, Integer> seen = new LinkedHashMap<>();
            for (long number = FIRST_UNSEEN; number < FIRST_UNSEEN + UNSEEN; number++) {
                Plan lived =
                        PlanRecorder.recordAsItTurnsOut(compiled, orders, source(season), Optional.empty(), number);
                happened(season, plan, lived).forEach(what -> seen.merge(what, 1, Integer::sum));
            }
            Map<String, Double> chances = new HashMap<>();
            plan.loads().forEach(load -> chances.put(load.id(), stated.stale(load.id())));
            chances.putAll(stated.inWindow());
            for (Map.Entry<String, Double> chance : chances.entrySet()) {
                double share = (double) seen.getOrDefault(chance.getKey(), 0) / UNSEEN;
                all++;
                inside += isAlike(chance.getValue(), share) ? 1 : 0;
            }
        }
        int least = BinomialDistribution.of(all, 0.95).inverseCumulativeProbability(0.001);

        assertThat(all).isGreaterThan(300);
        assertThat(inside).as("of %d", all).isGreaterThanOrEqualTo(least);
    }

    /** Whether two shares of so many seasons differ by no more than chance lets them in 95 of 100 cases. */
    private static boolean isAlike(double stated, double seen) {
        double pooled = (stated * STATED + seen * UNSEEN) / (STATED + UNSEEN);
        double deviation = Math.sqrt(pooled * (1 - pooled) * (1.0 / STATED + 1.0 / UNSEEN));
        return Math.abs(stated - seen) <= TWO_SIDED_95 * deviation + 0.0005;
    }

    /**
     * Ids of the plan's loads whose ground was not served in time by what was brought for it, and crops all in their window: told by the record of
     * what was done alone.
     */
    private static Set<String> happened(Season season, Plan plan, Plan lived) {
        Set<String> happened = new HashSet<>();
        plan.planters().forEach((id, planter) -> {
            Map<String, Double> before = before(season, planter.fields());
            List<Span> planned = spans(plan, id, before, season);
            List<Span> were = spans(lived, id, before, season);
            for (Span load : planned) {
                double middle = (load.from + load.to) / 2;
                if (were.stream().anyMatch(span -> span.stale && span.from <= middle && middle < span.to)) {
                    happened.add(load.id);
                }
            }
        });
        Map<String, Boolean> inWindow = new TreeMap<>();
        for (Field field : season.fields()) {
            double inTime = lived.planters().values().stream()
                    .flatMap(planter -> planter.activities().stream())
                    .filter(Activity.Planting.class::isInstance)
                    .map(Activity.Planting.class::cast)
                    .filter(piece -> piece.field().equals(field.id())
                            && !piece.start()
                                    .toLocalDate()
                                    .isAfter(field.window().last()))
                    .mapToDouble(Activity.Planting::areaHa)
                    .sum();
            inWindow.merge(field.crop(), inTime > field.areaHa() - 1e-5, Boolean::logicalAnd);
        }
        inWindow.forEach((crop, all) -> {
            if (all) {
                happened.add(crop);
            }
        });
        return happened;
    }

    private record Span(String id, double from, double to, boolean stale) {}

    private static Map<String, Double> before(Season season, List<String> fields) {
        Map<String, Double> before = new HashMap<>();
        double sum = 0;
        for (String field : fields) {
            before.put(field, sum);
            sum += season.field(field).areaHa();
        }
        return before;
    }

    private static List<Span> spans(Plan plan, String planter, Map<String, Double> before, Season season) {
        Map<String, Double> plantedHa = new HashMap<>();
        Map<String, double[]> ground = new HashMap<>();
        Map<String, Double> along = new HashMap<>();
        double at = 0;
        for (Plan.Load load : plan.loads()) {
            along.put(load.id(), 0.0);
        }
        TreeMap<String, Double> unused = new TreeMap<>();
        for (Activity activity : plan.planters().get(planter).activities()) {
            if (activity instanceof Activity.Fill fill) {
                along.put(fill.load(), at);
            } else if (activity instanceof Activity.Planting piece) {
                double from = before.get(piece.field()) + plantedHa.getOrDefault(piece.field(), 0.0);
                plantedHa.merge(piece.field(), piece.areaHa(), Double::sum);
                at = from + piece.areaHa();
                if (piece instanceof Activity.Plant plant) {
                    double[] span = ground.computeIfAbsent(plant.load(), id -> new double[] {from, from});
                    span[1] = at;
                }
            }
        }
        return plan.loads().stream()
                .filter(load -> load.planter().equals(planter))
                .map(load -> {
                    double spoiltHa =
                            load.dumpedL() / season.recipe(load.recipe()).mixLPerHa();
                    boolean stale = spoiltHa > LEAST_STALE_HA;
                    double[] span = ground.getOrDefault(load.id(), start(plan, planter, load, along, before));
                    return new Span(load.id(), span[0], span[1] + (stale ? spoiltHa : 0), stale);
                })
                .toList();
    }

    /** Where a load begins of which nothing was planted: where the planter was when it was too old. */
    private static double[] start(
            Plan plan, String planter, Plan.Load load, Map<String, Double> along, Map<String, Double> before) {
        double at = along.getOrDefault(load.id(), 0.0);
        Map<String, Double> plantedHa = new HashMap<>();
        for (Activity activity : plan.planters().get(planter).activities()) {
            if (activity instanceof Activity.Planting piece && !piece.start().isAfter(load.lastDrop())) {
                at = before.get(piece.field()) + plantedHa.merge(piece.field(), piece.areaHa(), Double::sum);
            }
        }
        return new double[] {at, at};
    }

    @Test
    void countsOfPartsComeToTheSameAsCountsOfAll() {
        Season season = uncertain(RandomSeasons.season(7, 12));
        CompiledSeason compiled = CompiledSeason.of(season);
        Plan plan = PlanRecorder.record(
                compiled, RandomSeasons.orders(season, RandomSeasons.lists(season, 7)), source(season));
        PlanChances chances = new PlanChances(compiled, plan);

        assertThat(chances.chances(List.of(chances.count(31, 10), chances.count(1, 30))))
                .isEqualTo(chances.chances(List.of(chances.count(1, 40))));
    }

    @Test
    void whereNothingVariesNothingGoesStaleAndAllIsAsPlanned() {
        for (long seed = 1; seed <= 20; seed++) {
            Season season = RandomSeasons.season(seed, 12)
                    .change()
                    .spread(Optional.of(new TimeSpread(0, 0, 0, 0, Optional.empty())))
                    .season();
            CompiledSeason compiled = CompiledSeason.of(season);
            Plan plan = PlanRecorder.record(
                    compiled, RandomSeasons.orders(season, RandomSeasons.lists(season, seed)), source(season));
            Chances chances = chances(compiled, plan, 1, 3);

            assertThat(chances.stale()).isEmpty();
            assertThat(chances.inWindow().values())
                    .allSatisfy(chance -> assertThat(chance * (1 - chance)).isCloseTo(0, within(1e-9)));
        }
    }

    private static Chances chances(CompiledSeason season, Plan plan, long first, int seasons) {
        PlanChances chances = new PlanChances(season, plan);
        return chances.chances(List.of(chances.count(first, seasons)));
    }

    private static Season uncertain(Season season) {
        return season.change().spread(Optional.of(TimeSpread.USUAL)).season();
    }

    private static Plan.SeasonSource source(Season season) {
        return Plan.SeasonSource.of(season, "season.yaml", "0".repeat(64));
    }
}

package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.audit.Audit;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.Plan.SeasonSource;
import freshfurrow.model.plan.WaitReason;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.season.Season;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** What holds for any season and any lists, also for lists with fields that their planter may not plant. */
class PlayedOutTest {
    private static final int MOST_FIELDS = 25;
    private static final List<Class<?>> EACH_KIND = kinds(Activity.class).toList();

    private static Stream<Class<?>> kinds(Class<?> type) {
        return type.isSealed()
                ? Arrays.stream(type.getPermittedSubclasses()).flatMap(PlayedOutTest::kinds)
                : Stream.of(type);
    }

    @Property(tries = 300)
    void theAuditFindsNothing(@ForAll long seed) {
        Season season = RandomSeasons.season(seed, MOST_FIELDS);
        assertThat(Audit.check(season, record(season, RandomSeasons.lists(season, seed))))
                .isEmpty();
    }

    @Property(tries = 300)
    void theRecordedPlanHasTheScoreOfTheHotPath(@ForAll long seed) {
        Season season = RandomSeasons.season(seed, MOST_FIELDS);
        List<List<String>> lists = anyLists(season, seed);
        Timeline timeline = run(new Timeline(CompiledSeason.of(season)), season, lists);

        assertThat(record(season, lists).score()).isEqualTo(score(timeline));
    }

    @Property(tries = 300)
    void theScoreFollowsFromTheActivities(@ForAll long seed) {
        Season season = RandomSeasons.season(seed, MOST_FIELDS);
        List<List<String>> lists = anyLists(season, seed);
        Plan plan = record(season, lists);
        ScoreFromActivities counted = new ScoreFromActivities(season, plan);

        assertThat(plan.score().hard()).isEqualTo(-counted.forbiddenFields());
        assertThat((double) plan.score().medium())
                .isBetween(-counted.lateUntreatedAndUnserved() - 1, -counted.lateUntreatedAndUnserved() + 1e-6);
        assertThat((double) plan.score().soft())
                .isCloseTo(-counted.effort(), within(0.56 + 0.01 * plan.loads().size()));
    }

    @Property(tries = 300)
    void aTimelineForgetsWhatItPlayedBefore(@ForAll long seed) {
        Season season = RandomSeasons.season(seed, MOST_FIELDS);
        List<List<String>> lists = anyLists(season, seed);
        Timeline timeline = new Timeline(CompiledSeason.of(season));
        Plan.Score first = score(run(timeline, season, lists));
        run(timeline, season, anyLists(season, seed + 1));

        assertThat(score(run(timeline, season, lists))).isEqualTo(first);
    }

    @Property(tries = 300)
    void everyPieceOfAFieldIsPlantedOrUnserved(@ForAll long seed) {
        Season season = RandomSeasons.season(seed, MOST_FIELDS);
        Plan plan = record(season, anyLists(season, seed));
        Map<String, Long> dm2 = new HashMap<>();
        plants(plan).forEach(plant -> dm2.merge(plant.field(), Math.round(plant.areaHa() * 1e6), Long::sum));
        plan.unserved().forEach(left -> dm2.merge(left.field(), Math.round(left.areaHa() * 1e6), Long::sum));

        for (Field field : season.fields()) {
            assertThat(dm2.get(field.id())).as(field.id()).isEqualTo(Math.round(field.areaHa() * 1e6));
        }
    }

    @Property(tries = 300)
    void noLoadIsLeftInATank(@ForAll long seed) {
        Season season = RandomSeasons.season(seed, MOST_FIELDS);

        assertThat(record(season, anyLists(season, seed)).loads()).allSatisfy(load -> {
            assertThat(load.dumpedL()).isZero();
            assertThat(load.appliedL()).isEqualTo(load.litres());
            assertThat(load.lastDrop()).isBeforeOrEqualTo(load.deadline());
        });
    }

    /** Lest the properties hold because nothing happens. */
    @Example
    void someSeasonHasEachThingThatCanHappen() {
        Set<Class<?>> kinds = new HashSet<>();
        Set<WaitReason> reasons = EnumSet.noneOf(WaitReason.class);
        Set<String> seen = new TreeSet<>();
        for (long seed = -200; seed < 200; seed++) {
            Season season =
                    seed % 4 == 0 ? RandomSeasons.mixed(seed, MOST_FIELDS) : RandomSeasons.season(seed, MOST_FIELDS);
            Plan plan = record(season, anyLists(season, seed));
            activities(plan).forEach(activity -> {
                kinds.add(activity.getClass());
                if (activity instanceof Activity.Wait wait) {
                    reasons.add(wait.why());
                }
            });
            note(seen, "forbidden", plan.score().hard() < 0);
            note(seen, "late", plan.totals().lateHaDays() > 0);
            note(seen, "all served", plan.unserved().isEmpty());
            note(
                    seen,
                    "several batches in a load",
                    plan.loads().stream().anyMatch(load -> load.batches().size() > 1));
            note(seen, "several loads of a batch", sharesBatches(plan));
            note(
                    seen,
                    "several lots in a batch",
                    plan.batches().stream().anyMatch(batch -> batch.lots().size() > 1));
            note(
                    seen,
                    "overnight",
                    plants(plan)
                            .anyMatch(
                                    planting -> planting instanceof Activity.Plant plant && isOvernight(plan, plant)));
        }
        assertThat(kinds).containsAll(EACH_KIND).hasSameSizeAs(EACH_KIND);
        assertThat(reasons).containsExactly(WaitReason.values());
        assertThat(seen).hasSize(7);
    }

    private static void note(Set<String> seen, String what, boolean happens) {
        if (happens) {
            seen.add(what);
        }
    }

    private static boolean sharesBatches(Plan plan) {
        List<String> fed =
                plan.loads().stream().flatMap(load -> load.batches().stream()).toList();
        return new HashSet<>(fed).size() < fed.size();
    }

    private static boolean isOvernight(Plan plan, Activity.Plant plant) {
        return activities(plan)
                .filter(Activity.Fill.class::isInstance)
                .map(Activity.Fill.class::cast)
                .anyMatch(fill -> fill.load().equals(plant.load())
                        && fill.start().toLocalDate().isBefore(plant.start().toLocalDate()));
    }

    private static Stream<Activity> activities(Plan plan) {
        return Stream.concat(
                plan.planters().values().stream().flatMap(planter -> planter.activities().stream()),
                plan.rigs().values().stream().flatMap(rig -> rig.activities().stream()));
    }

    private static Stream<Activity.Planting> plants(Plan plan) {
        return activities(plan).filter(Activity.Planting.class::isInstance).map(Activity.Planting.class::cast);
    }

    /** Each field with any planter or with none. */
    private static List<List<String>> anyLists(Season season, long seed) {
        Random random = new Random(seed);
        List<String> order =
                new ArrayList<>(season.fields().stream().map(Field::id).toList());
        Collections.shuffle(order, random);
        List<List<String>> lists = new ArrayList<>();
        season.applicators().forEach(planter -> lists.add(new ArrayList<>()));
        for (String field : order) {
            if (random.nextInt(12) > 0) {
                lists.get(random.nextInt(lists.size())).add(field);
            }
        }
        return lists;
    }

    private static Plan record(Season season, List<List<String>> lists) {
        return PlanRecorder.record(
                CompiledSeason.of(season),
                RandomSeasons.orders(season, lists),
                new SeasonSource(season.name(), "season.yaml", "00", DisplayUnits.METRIC));
    }

    private static Timeline run(Timeline timeline, Season season, List<List<String>> lists) {
        List<String> ids = season.fields().stream().map(Field::id).toList();
        Set<String> without = RandomSeasons.orders(season, lists).withoutExtract();
        int[][] entries = lists.stream()
                .map(list -> list.stream()
                        .mapToInt(id -> ids.indexOf(id) + (without.contains(id) ? ids.size() : 0))
                        .toArray())
                .toArray(int[][]::new);
        timeline.run(entries, lists.stream().mapToInt(List::size).toArray());
        return timeline;
    }

    private static Plan.Score score(Timeline timeline) {
        return new Plan.Score(timeline.hard(), timeline.medium(), timeline.soft());
    }
}

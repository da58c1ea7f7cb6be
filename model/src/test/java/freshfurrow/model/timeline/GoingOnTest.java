package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.audit.Audit;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanStart;
import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.progress.Promises;
import freshfurrow.model.progress.StandingAt;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.season.Season;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** A plan broken off at any moment and gone on with from where its machines stand. */
public class GoingOnTest {
    private static final Plan.SeasonSource SOURCE =
            new Plan.SeasonSource("Random", "season.yaml", "0".repeat(64), DisplayUnits.METRIC);

    @Property(tries = 300)
    void whatIsLeftIsAPlanThatHoldsAndNoAcreIsLostOrDoneTwice(
            @ForAll long seed,
            @ForAll @IntRange(min = 1, max = 25) int fields,
            @ForAll @IntRange(max = 999) int moment) {
        goOn(RandomSeasons.season(seed, fields), seed, moment);
    }

    @Property(tries = 200)
    void soItIsWherePlantersAndSprayersShareRigs(
            @ForAll long seed,
            @ForAll @IntRange(min = 1, max = 25) int fields,
            @ForAll @IntRange(max = 999) int moment) {
        goOn(RandomSeasons.mixed(seed, fields), seed, moment);
    }

    @Property(tries = 200)
    void soItIsWhereSprayersAreMountedOnRigs(
            @ForAll long seed,
            @ForAll @IntRange(min = 1, max = 25) int fields,
            @ForAll @IntRange(max = 999) int moment) {
        goOn(RandomSeasons.withMounted(seed, fields), seed, moment);
    }

    private static void goOn(Season season, long seed, int moment) {
        Plan whole = PlanRecorder.record(
                CompiledSeason.of(season), RandomSeasons.orders(season, dealt(season, new Random(seed))), SOURCE);
        LocalDateTime now = season.first().atStartOfDay().plusMinutes(moment * (season.days() * 1440L - 1) / 999);

        PlanStart start = StandingAt.of(season, whole, now).withPromises(Promises.of(whole, now, 2));
        Season left = start.remaining(season);
        Plan rest = PlanRecorder.record(
                CompiledSeason.of(left), PlantingOrders.of(whole).with(remaining(whole, left)), named(season), start);

        assertThat(Audit.check(left, rest)).isEmpty();
        assertNoMixIsMadeThatNobodyStarted(whole, start, now);
        Map<String, Double> accounted = start.plantedHa();
        areas(rest).forEach((field, ha) -> accounted.merge(field, ha, Double::sum));
        rest.unserved().forEach(unserved -> accounted.merge(unserved.field(), unserved.areaHa(), Double::sum));
        season.fields().forEach(field -> assertThat(accounted.get(field.id())).isCloseTo(field.areaHa(), within(3e-6)));
    }

    private static void assertNoMixIsMadeThatNobodyStarted(Plan whole, PlanStart start, LocalDateTime now) {
        Map<String, LocalDateTime> starts =
                whole.batches().stream().collect(Collectors.toMap(Plan.Batch::id, Plan.Batch::start));
        start.standing().rigs().values().forEach(rig -> rig.mix().ifPresent(mix -> assertThat(mix.batches())
                .anySatisfy(batch -> assertThat(starts.get(batch)).isBefore(now))));
    }

    /** A small load takes the last of the compost, of which batches promised before are made the day after. */
    @Example
    void aSmallLoadMayUseUpTheCompostBeforeOtherBatchesAreMade() {
        whatIsLeftIsAPlanThatHoldsAndNoAcreIsLostOrDoneTwice(-175, 21, 256);
    }

    /** A load leaves just 100 m2 of a mix, which are enough for another fill. */
    @Example
    void aLoadThatLeavesAFillOfItsMixDoesNotUseThatUp() {
        whatIsLeftIsAPlanThatHoldsAndNoAcreIsLostOrDoneTwice(365, 4, 26);
    }

    /** The moment is in the hours, of planting that goes on past what a flush leaves of them. */
    @Example
    void plantingUnderWayMayStillGoOnPastTheHours() {
        whatIsLeftIsAPlanThatHoldsAndNoAcreIsLostOrDoneTwice(-288485, 15, 446);
    }

    /** What is left of a season when lists of its fields were followed for a share of its days. */
    public static Season left(Season season, long seed, double share) {
        Plan plan = PlanRecorder.record(
                CompiledSeason.of(season), RandomSeasons.orders(season, dealt(season, new Random(seed))), SOURCE);
        LocalDateTime now = season.first().atStartOfDay().plusMinutes((long) (share * season.days() * 1440));
        PlanStart start = StandingAt.of(season, plan, now);
        return start.withPromises(Promises.of(plan, now, 2)).remaining(season);
    }

    private static Plan.SeasonSource named(Season season) {
        return new Plan.SeasonSource(season.name(), "season.yaml", "0".repeat(64), season.units());
    }

    static Map<String, Double> areas(Plan plan) {
        return plan.planters().values().stream()
                .flatMap(planter -> planter.activities().stream())
                .filter(Activity.Planting.class::isInstance)
                .map(Activity.Planting.class::cast)
                .collect(Collectors.groupingBy(
                        Activity.Planting::field, Collectors.summingDouble(Activity.Planting::areaHa)));
    }

    static List<List<String>> remaining(Plan plan, Season left) {
        Set<String> ids = left.fields().stream().map(Field::id).collect(Collectors.toCollection(HashSet::new));
        return plan.planters().values().stream()
                .map(planter -> planter.fields().stream().filter(ids::contains).toList())
                .toList();
    }

    private static List<List<String>> dealt(Season season, Random random) {
        List<List<String>> lists = new ArrayList<>();
        season.applicators().forEach(planter -> lists.add(new ArrayList<>()));
        for (Field field : season.fields()) {
            List<Integer> may = new ArrayList<>();
            for (int p = 0; p < lists.size(); p++) {
                if (field.allows(season.applicators().get(p))) {
                    may.add(p);
                }
            }
            if (!may.isEmpty()) {
                List<String> list = lists.get(may.get(random.nextInt(may.size())));
                list.add(random.nextInt(list.size() + 1), field.id());
            }
        }
        return lists;
    }
}

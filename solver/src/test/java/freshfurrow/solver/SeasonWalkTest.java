package freshfurrow.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.audit.Audit;
import freshfurrow.model.example.Tries;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.FromLog;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanStart;
import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.progress.Promises;
import freshfurrow.model.progress.StandingAt;
import freshfurrow.model.season.Judgement;
import freshfurrow.model.season.Outage;
import freshfurrow.model.season.Planter;
import freshfurrow.model.season.Rain;
import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Standing;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import freshfurrow.solver.construction.FollowedLists;
import freshfurrow.solver.example.InventedSeason;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Forty days of a season: each day rain or a breakdown may come unforeseen, machines are up to a fifth faster or slower than the
 * season says, and each morning the rest is planned again from where that has led.
 */
class SeasonWalkTest {
    private static final int DAYS = 40;

    private final Random random = new Random(7);
    private Season whole = InventedSeason.of(24, 2, 2, 9_000, 1);
    private PlanStart start = beginning(whole);
    private PlantingOrders lists = PlantingOrders.withExtract(List.of());

    @ParameterizedTest
    @MethodSource("seeds")
    void noRuleIsBrokenOnAnyDayAndEveryAcreIsAccountedForOnce(long seed) {
        random.setSeed(seed);
        whole = InventedSeason.withRain(InventedSeason.of(24, 2, 2, 9_000, seed), List.of());
        start = beginning(whole);
        lists = new SeasonPlanner(CompiledSeason.of(whole), steps(seed), ProgressListener.SILENT).plan();
        assertThat(whole.days()).isGreaterThan(DAYS);

        for (int day = 0; day < DAYS; day++) {
            double before = doneHa();
            live(day);
            assertThat(doneHa()).as("done on day " + day).isGreaterThanOrEqualTo(before - 1e-6);
            planAgain(seed);
        }

        Map<String, Double> done = start.plantedHa();
        whole.fields().forEach(field -> assertThat(done.getOrDefault(field.id(), 0.0))
                .isLessThanOrEqualTo(field.areaHa() + 1e-6));
        assertThat(doneHa()).as("something was done").isGreaterThan(100);
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, Tries.of(3));
    }

    /** A day goes as the plan says until something happens, and then on with the same lists until the next morning. */
    private void live(int day) {
        LocalDateTime morning = whole.first().plusDays(day).atTime(4, 0);
        Optional<LocalDateTime> event = Optional.of(morning.plusMinutes(120 + random.nextInt(900)));
        Season paced = paced();
        follow(paced, event.get());
        if (random.nextInt(5) == 0) {
            LocalDateTime at = event.get();
            List<Rain> rain = new ArrayList<>(start.rain());
            rain.add(new Rain(at.toLocalDate(), at.toLocalTime().toSecondOfDay(), 3 + random.nextInt(25)));
            start = new PlanStart(
                    start.standing(),
                    start.planted(),
                    start.lots(),
                    rain,
                    start.outages(),
                    start.judged(),
                    start.batches(),
                    FromLog.NOTHING,
                    Optional.empty());
        } else if (random.nextInt(5) == 0) {
            List<Outage> outages = new ArrayList<>(start.outages());
            String machine = random.nextBoolean()
                    ? whole.rigs().get(random.nextInt(2)).id()
                    : whole.applicators().get(random.nextInt(2)).id();
            outages.add(new Outage(machine, event.get(), event.get().plusMinutes(30 + random.nextInt(2_000))));
            start = new PlanStart(
                    start.standing(),
                    start.planted(),
                    start.lots(),
                    start.rain(),
                    outages,
                    start.judged(),
                    start.batches(),
                    FromLog.NOTHING,
                    Optional.empty());
        }
        if (random.nextInt(3) == 0) {
            judge(event.get());
        }
        follow(paced, morning.plusDays(1));
    }

    /** Somebody finds the ground of a field fit, or unfit for some hours or for good. */
    private void judge(LocalDateTime at) {
        Map<String, List<Judgement>> judged = new LinkedHashMap<>(start.judged());
        String field = whole.fields().get(random.nextInt(whole.fields().size())).id();
        List<Judgement> said = new ArrayList<>(judged.getOrDefault(field, List.of()));
        said.add(RandomSeasons.judgement(whole, at, random));
        judged.put(field, said);
        start = new PlanStart(
                start.standing(),
                start.planted(),
                start.lots(),
                start.rain(),
                start.outages(),
                judged,
                start.batches(),
                FromLog.NOTHING,
                Optional.empty());
    }

    private void follow(Season paced, LocalDateTime until) {
        Season left = start.remaining(paced);
        Plan lived = record(left, lists);
        assertThat(Audit.check(left, lived)).as("lived until " + until).isEmpty();
        start = StandingAt.of(left, lived, until);
    }

    private void planAgain(long seed) {
        Plan followed = record(start.remaining(whole), lists);
        start = start.withPromises(Promises.of(followed, start.now(), 2));
        CompiledSeason left = CompiledSeason.of(start.remaining(whole));
        lists = new SeasonPlanner(left, steps(seed), ProgressListener.SILENT).planFrom(lists);
        Plan plan = record(left.season(), lists);
        assertThat(Audit.check(left.season(), plan))
                .as("planned at " + start.now())
                .isEmpty();
        assertAllAccountedFor(plan);
    }

    private void assertAllAccountedFor(Plan plan) {
        Map<String, Double> areas = start.plantedHa();
        plan.planters().values().stream()
                .flatMap(planter -> planter.activities().stream())
                .filter(Activity.Plant.class::isInstance)
                .map(Activity.Plant.class::cast)
                .forEach(plant -> areas.merge(plant.field(), plant.areaHa(), Double::sum));
        plan.unserved().forEach(left -> areas.merge(left.field(), left.areaHa(), Double::sum));
        whole.fields().forEach(field -> assertThat(areas.get(field.id())).isCloseTo(field.areaHa(), within(1e-4)));
    }

    private Plan record(Season left, PlantingOrders followed) {
        CompiledSeason compiled = CompiledSeason.of(left);
        return PlanRecorder.record(
                compiled,
                FollowedLists.left(compiled, followed).orders(left),
                Plan.SeasonSource.of(left, "season.yaml", "0".repeat(64)),
                start);
    }

    private Season paced() {
        return whole.change()
                .applicators(whole.planters().stream().map(this::paced).toList())
                .rigs(whole.rigs().stream().map(this::paced).toList())
                .season();
    }

    private Planter paced(Planter planter) {
        return planter.change().speedMPerS(planter.speedMPerS() * offByAFifth()).planter();
    }

    private Rig paced(Rig rig) {
        return rig.change()
                .batchTimeS((int) (rig.batchTimeS() * offByAFifth()))
                .transferLPerS(rig.transferLPerS() * offByAFifth())
                .rig();
    }

    private double offByAFifth() {
        return 0.8 + 0.4 * random.nextDouble();
    }

    private double doneHa() {
        return start.planted().stream().mapToDouble(PlanStart.Planted::areaHa).sum();
    }

    private static PlanStart beginning(Season whole) {
        return new PlanStart(
                Standing.at(whole.first().atStartOfDay()),
                List.of(),
                whole.compost(),
                List.of(),
                List.of(),
                Map.of(),
                List.of(),
                FromLog.NOTHING,
                Optional.empty());
    }

    private static PlanningOptions steps(long seed) {
        return new PlanningOptions(Optional.empty(), OptionalLong.of(300), seed);
    }
}

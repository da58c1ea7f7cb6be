package freshfurrow.model.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.log.Column;
import freshfurrow.model.log.Entry;
import freshfurrow.model.log.Fact;
import freshfurrow.model.log.LogContext;
import freshfurrow.model.log.LogSums;
import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.progress.AsPlanned;
import freshfurrow.model.progress.News;
import freshfurrow.model.progress.SoFar;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.read.LogReader;
import freshfurrow.model.read.LogReading;
import freshfurrow.model.read.tree.FileProblem;
import freshfurrow.model.read.tree.TextFile;
import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** What a plan says was done by any moment, written into the log of any season. */
class AsPlannedTest {
    private static final News NOTHING_NEW = new News(List.of(), List.of(), Set.of());

    /** What decimals of any unit round away of a hundred lines, and what sheets show as nothing, 0.05 ac. */
    private static final double ROUNDING = 0.03;

    @Property(tries = 200)
    void theSeasonStandsWhereThePlanLeavesIt(@ForAll long seed, @ForAll @IntRange(max = 999) int moment)
            throws FileProblem {
        theSeasonStandsAsPlanned(seed, moment);
    }

    /** What a planter has yet to plant of a field, 0.1 ha, is no rounding of the fifty pieces before. */
    @Example
    void thePieceThatIsUnderWayIsNotWholeAfterManySmallOnes() throws FileProblem {
        theSeasonStandsAsPlanned(-444810, 986);
        theSeasonStandsAsPlanned(-477739, 840);
    }

    private static void theSeasonStandsAsPlanned(long seed, int moment) throws FileProblem {
        Season season = RandomSeasons.season(seed);
        Plan plan = plan(season, seed);
        LocalDateTime now = moment(season, moment);

        SeasonLog log = read(season, lines(season, AsPlanned.facts(season, plan, SeasonLog.EMPTY, now, Set.of())));

        SoFar.Result logged = SoFar.of(season, plan, now, NOTHING_NEW, log, false);
        SoFar.Result planned = SoFar.of(season, plan, now, NOTHING_NEW, SeasonLog.EMPTY, false);
        Map<String, Double> plannedHa = planned.start().plantedHa();
        season.fields().forEach(field -> assertThat(logged.start().plantedHa().getOrDefault(field.id(), 0.0))
                .as(field.id())
                .isCloseTo(plannedHa.getOrDefault(field.id(), 0.0), within(ROUNDING)));
        assertThat(logged.start().standing().loads())
                .isEqualTo(planned.start().standing().loads());
        assertThat(loggedKg(season, log)).isCloseTo(plannedKg(plan, now), within(ROUNDING));
        assertThat(AsPlanned.facts(season, plan, log, now, Set.of())).isEmpty();
    }

    /** At the end of one day, in the middle of planting, and again later. */
    @Property(tries = 100)
    void inTwoPartsItComesToTheSame(
            @ForAll long seed, @ForAll @IntRange(max = 999) int one, @ForAll @IntRange(max = 999) int other)
            throws FileProblem {
        Season season = RandomSeasons.season(seed);
        Plan plan = plan(season, seed);
        LocalDateTime first = moment(season, Math.min(one, other));
        LocalDateTime second = moment(season, Math.max(one, other));
        List<AsPlanned.Done> before = AsPlanned.facts(season, plan, SeasonLog.EMPTY, first, Set.of());
        SeasonLog log = read(season, lines(season, before));

        List<AsPlanned.Done> rest = AsPlanned.facts(season, plan, log, second, Set.of());

        Map<String, Double> inParts = plantedHa(Stream.concat(before.stream(), rest.stream()));
        Map<String, Double> atOnce =
                plantedHa(AsPlanned.facts(season, plan, SeasonLog.EMPTY, second, Set.of()).stream());
        atOnce.forEach((field, ha) ->
                assertThat(inParts.getOrDefault(field, 0.0)).as(field).isCloseTo(ha, within(ROUNDING)));
    }

    private static Map<String, Double> plantedHa(Stream<AsPlanned.Done> all) {
        Map<String, Double> ha = new HashMap<>();
        all.forEach(done -> {
            if (done.fact() instanceof Fact.Planted planted) {
                ha.merge(planted.field(), planted.areaHa(), Double::sum);
            }
        });
        return ha;
    }

    /** Some lines are there before, a few minutes off, of a little less, some without a load. */
    @Property(tries = 200)
    void nothingIsSaidTwice(@ForAll long seed, @ForAll @IntRange(max = 999) int moment) throws FileProblem {
        Random random = new Random(seed);
        Season season = RandomSeasons.season(seed);
        Plan plan = plan(season, seed);
        LocalDateTime now = moment(season, moment);
        List<AsPlanned.Done> all = AsPlanned.facts(season, plan, SeasonLog.EMPTY, now, Set.of());
        List<AsPlanned.Done> some = all.stream()
                .filter(done -> random.nextInt(3) == 0)
                .map(done -> asPeopleWrite(done, random))
                .toList();
        SeasonLog before = new SeasonLog(IntStream.range(0, some.size())
                .mapToObj(i -> new Entry(i + 1, some.get(i).at(), some.get(i).fact(), ""))
                .toList());

        List<AsPlanned.Done> rest = AsPlanned.facts(season, plan, before, now, Set.of());

        assertThat(count(rest, Fact.BatchMade.class))
                .isEqualTo(count(all, Fact.BatchMade.class) - count(some, Fact.BatchMade.class));
        assertThat(count(rest, Fact.WaterDrawn.class))
                .isEqualTo(count(all, Fact.WaterDrawn.class) - count(some, Fact.WaterDrawn.class));
        Map<String, Double> ha = new HashMap<>();
        Stream.concat(some.stream(), rest.stream()).forEach(done -> {
            if (done.fact() instanceof Fact.Planted planted) {
                ha.merge(planted.field(), planted.areaHa(), Double::sum);
            }
        });
        Map<String, Double> plannedHa = SoFar.of(season, plan, now, NOTHING_NEW, SeasonLog.EMPTY, false)
                .start()
                .plantedHa();
        ha.forEach((field, its) ->
                assertThat(its).as(field).isLessThanOrEqualTo(plannedHa.getOrDefault(field, 0.0) + 1e-6));
    }

    @Property(tries = 50)
    void whatIsLeftOutIsNotSaid(@ForAll long seed, @ForAll @IntRange(max = 999) int moment) {
        Season season = RandomSeasons.season(seed);
        Plan plan = plan(season, seed);
        String field = season.fields().get(0).id();
        String rig = season.rigs().get(0).id();
        String planter = season.applicators().get(0).id();

        assertThat(AsPlanned.facts(season, plan, SeasonLog.EMPTY, moment(season, moment), Set.of(field, rig, planter)))
                .noneMatch(done -> done.fact() instanceof Fact.Planted planted
                        && (planted.field().equals(field)
                                || planted.planter().orElseThrow().equals(planter)))
                .noneMatch(done -> done.fact() instanceof Fact.BatchMade batch
                        && batch.rig().equals(rig))
                .noneMatch(done -> done.fact() instanceof Fact.WaterDrawn drawn
                        && drawn.rig().equals(rig));
    }

    private static AsPlanned.Done asPeopleWrite(AsPlanned.Done done, Random random) {
        LocalDateTime at = done.at().plusSeconds(random.nextInt(120));
        if (done.fact() instanceof Fact.Planted planted) {
            return new AsPlanned.Done(
                    at,
                    new Fact.Planted(
                            planted.field(),
                            planted.areaHa() * 0.9,
                            planted.planter(),
                            planted.load(),
                            planted.withoutExtract()));
        }
        if (done.fact() instanceof Fact.BatchMade batch) {
            return new AsPlanned.Done(
                    done.at(), new Fact.BatchMade(batch.rig(), batch.kgByLot(), batch.loads(), batch.place()));
        }
        return done;
    }

    private static long count(List<AsPlanned.Done> all, Class<? extends Fact> kind) {
        return all.stream().filter(done -> kind.isInstance(done.fact())).count();
    }

    private static double loggedKg(Season season, SeasonLog log) {
        return LogSums.of(season, log).lots().values().stream()
                .mapToDouble(stock -> stock.usedKg())
                .sum();
    }

    private static double plannedKg(Plan plan, LocalDateTime now) {
        return plan.rigs().values().stream()
                .flatMap(rig -> rig.activities().stream())
                .filter(activity ->
                        activity instanceof Activity.Extract && !activity.end().isAfter(now))
                .flatMap(activity -> plan.batches().stream()
                        .filter(batch -> batch.id().equals(((Activity.Extract) activity).batch())))
                .mapToDouble(batch ->
                        batch.lots().values().stream().mapToDouble(kg -> kg).sum())
                .sum();
    }

    private static List<Map<Column, String>> lines(Season season, List<AsPlanned.Done> all) {
        LineOfFact line = new LineOfFact(season.units());
        return all.stream().map(done -> line.cells(done.at(), done.fact())).toList();
    }

    /** As the log's reader reads them: nothing is wrong with them. */
    private static SeasonLog read(Season season, List<Map<Column, String>> lines) throws FileProblem {
        TextFile none = TextFile.of("log.csv", "");
        LogReading reading =
                LogReader.read(TextFile.of("log.csv", new LogText(none).addition(lines)), LogContext.of(season));
        assertThat(reading).as(reading.toString()).isInstanceOf(LogReading.Valid.class);
        return ((LogReading.Valid) reading).log();
    }

    private static LocalDateTime moment(Season season, int share) {
        return season.start().plusMinutes(share * (season.days() * 1440L - 1) / 999);
    }

    private static Plan plan(Season season, long seed) {
        return PlanRecorder.record(
                CompiledSeason.of(season),
                RandomSeasons.lists(season, seed),
                new Plan.SeasonSource("Random", "season.yaml", "0".repeat(64), DisplayUnits.METRIC));
    }
}

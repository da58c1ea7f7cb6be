package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.audit.Audit;
import freshfurrow.model.log.Entry;
import freshfurrow.model.log.Fact;
import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.progress.SoFar;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.season.Machine;
import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.season.Season;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** The worked planter plants from 07:33:20 on, a hectare in 1,000 s, in hours from 07:00 to 19:00. */
class BehindThePlanTest {
    private static final LocalDateTime EIGHT = WorkedSeason.FIRST.atTime(8, 0);

    private final WorkedPlan before = new WorkedSeason().days(3).field("A", 5).plan("A");

    @Test
    void aPlanterGoesOnThatMuchLater() {
        // 1.6 ha are planted by 08:00, and 3.4 ha take 3,400 s
        assertThat(goOn("08:00", behind(1, EIGHT, 0)).planter("P1", "plant"))
                .containsExactly("1 08:00:00 - 1 08:56:40 plant A 3.400 ha");
        assertThat(goOn("08:00", behind(1, EIGHT, 50)).planter("P1", "plant"))
                .containsExactly("1 08:50:00 - 1 09:46:40 plant A 3.400 ha");
    }

    @Test
    void aRigGoesOnThatMuchLater() {
        Fact late = new Fact.MachineBehind("R1", Duration.ofMinutes(40));
        LocalDateTime six = WorkedSeason.FIRST.atTime(6, 0);

        String onTime = goOn("06:00").rig("R1").get(0);
        String later = goOn("06:00", new Entry(1, six, late, "")).rig("R1").get(0);

        assertThat(onTime).startsWith("1 06:00:00 ");
        assertThat(later).startsWith("1 06:40:00 ").endsWith(onTime.substring(onTime.indexOf(" move")));
    }

    @Test
    void theNewestWordHoldsAndAWordThatIsVoidDoesNot() {
        assertThat(soFar("08:00", behind(1, EIGHT.minusMinutes(30), 50), behind(2, EIGHT, 20))
                        .behind())
                .containsExactly(Map.entry("P1", Duration.ofMinutes(20)));
        assertThat(soFar("08:00", behind(1, EIGHT.minusMinutes(30), 50), behind(2, EIGHT, 0))
                        .behind())
                .isEmpty();
        assertThat(soFar("08:00", behind(1, EIGHT, 50), new Entry(2, EIGHT, new Fact.Voided(1), "P2"))
                        .behind())
                .isEmpty();
    }

    @Test
    void aPlanMadeAfterItKnowsOfIt() {
        SeasonLog log = new SeasonLog(List.of(behind(1, EIGHT, 50)));
        UnderWay first = UnderWay.at(before, "08:00", UnderWay.NOTHING_NEW, log);
        WorkedPlan again = first.goOn();

        SoFar.Result soFar =
                SoFar.of(before.season(), again.plan(), EIGHT.plusHours(1), UnderWay.NOTHING_NEW, log, false);

        assertThat(soFar.behind()).isEmpty();
        // from 08:50 on: 600 s by 09:00
        assertThat(soFar.start().plantedHa()).containsExactly(Map.entry("A", 2.2));
    }

    @Test
    void aFieldWithLinesInTheLogIsAsFarAsTheySay() {
        Entry planted = new Entry(1, EIGHT, new Fact.Planted("A", 0.6, Optional.of("P1"), Optional.empty()), "");

        assertThat(soFar("08:00", planted, behind(2, EIGHT, 50)).behind()).isEmpty();
    }

    @Test
    void whatIsLeftOfADayIsWorkedBeforeTheNextMorning() {
        // hours end at 19:00
        LocalDateTime evening = WorkedSeason.FIRST.atTime(18, 30);
        Season season = before.season();

        assertThat(HoursOfWork.after(season, season.applicators().get(0), evening, Duration.ofMinutes(20)))
                .isEqualTo(evening.plusMinutes(20));
        assertThat(HoursOfWork.after(season, season.applicators().get(0), evening, Duration.ofMinutes(50)))
                .isEqualTo(WorkedSeason.day(2).atTime(7, 20));
        assertThat(HoursOfWork.after(season, season.applicators().get(0), evening, Duration.ofDays(9)))
                .isEqualTo(season.end());
    }

    @Property(tries = 200)
    void whereverMachinesAreBehindThePlanHoldsAndTheyHaveWorkedThatMuchBefore(
            @ForAll long seed, @ForAll @IntRange(max = 999) int moment) {
        Random random = new Random(seed);
        Season season = RandomSeasons.season(seed);
        Plan plan = record(season, RandomSeasons.lists(season, seed), Optional.empty());
        LocalDateTime now = season.start().plusMinutes(moment * (season.days() * 1440L - 1) / 999);
        List<Machine> machines = season.machines().toList();
        Machine machine = machines.get(random.nextInt(machines.size()));
        Duration by = Duration.ofMinutes(random.nextInt(1_000));
        SeasonLog log = new SeasonLog(List.of(new Entry(1, now, new Fact.MachineBehind(machine.id(), by), "")));

        SoFar.Result soFar = SoFar.of(season, plan, now, UnderWay.NOTHING_NEW, log, false);
        SoFar.Result onTime = SoFar.of(season, plan, now, UnderWay.NOTHING_NEW, SeasonLog.EMPTY, false);
        Season left = soFar.start().remaining(season);
        Plan again = record(left, RandomSeasons.lists(left, seed), Optional.of(soFar));

        assertThat(Audit.check(left, again)).isEmpty();
        LocalDateTime free = onTime.start().standing().freeFrom(machine.id());
        // what is on board of a machine that is behind for all that is left is let out when the season is over
        activities(again, machine.id())
                .filter(activity -> activity.start().isBefore(season.end()))
                .forEach(activity -> assertThat(worked(left, machine, free, activity.start()))
                        .isGreaterThanOrEqualTo(by.toSeconds()));
    }

    private static Stream<Activity> activities(Plan plan, String machine) {
        return (plan.planters().containsKey(machine)
                        ? plan.planters().get(machine).activities()
                        : plan.rigs().get(machine).activities())
                .stream().filter(activity -> !(activity instanceof Activity.Wait));
    }

    /** Seconds of a machine's hours between two moments, counted span by span. */
    private static long worked(Season season, Machine machine, LocalDateTime from, LocalDateTime to) {
        return from.toLocalDate()
                .datesUntil(to.toLocalDate().plusDays(1))
                .filter(date -> !season.closed().contains(date))
                .flatMap(date -> machine.hours().spans().stream().map(span -> {
                    LocalDateTime start = date.atStartOfDay().plusSeconds(span.startS());
                    LocalDateTime end = date.atStartOfDay().plusSeconds(span.endS());
                    return Duration.between(start.isAfter(from) ? start : from, end.isBefore(to) ? end : to);
                }))
                .filter(span -> !span.isNegative())
                .mapToLong(Duration::toSeconds)
                .sum();
    }

    private static Plan record(Season season, List<List<String>> lists, Optional<SoFar.Result> soFar) {
        Plan.SeasonSource source = new Plan.SeasonSource("Random", "season.yaml", "0".repeat(64), DisplayUnits.METRIC);
        return soFar.map(its -> PlanRecorder.record(CompiledSeason.of(season), lists, source, its.start()))
                .orElseGet(() -> PlanRecorder.record(CompiledSeason.of(season), lists, source));
    }

    private static Entry behind(int number, LocalDateTime at, int minutes) {
        return new Entry(number, at, new Fact.MachineBehind("P1", Duration.ofMinutes(minutes)), "");
    }

    private SoFar.Result soFar(String clock, Entry... entries) {
        return SoFar.of(
                before.season(),
                before.plan(),
                WorkedSeason.FIRST.atTime(LocalTime.parse(clock)),
                UnderWay.NOTHING_NEW,
                new SeasonLog(List.of(entries)),
                false);
    }

    private WorkedPlan goOn(String clock, Entry... entries) {
        return UnderWay.at(before, clock, UnderWay.NOTHING_NEW, new SeasonLog(List.of(entries)))
                .goOn();
    }
}

package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.log.Entry;
import freshfurrow.model.log.Fact;
import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.progress.AsPlanned;
import freshfurrow.model.progress.StoppedWork;
import freshfurrow.model.season.Standing;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/**
 * What is said of tanks when work stops is what a replan finds in them. In the worked season two loads of 5 ha, 1,000 L each, 200 L/ha, plant
 * field A of 10 ha: L0001 is filled until 07:33:20 and planted until 08:56:40, L0002 is filled until 09:10:00 and planted until 10:33:20.
 */
class StoppedWorkTest {
    private static final WorkedPlan PLAN = new WorkedSeason().field("A", 10).plan("A");

    @Test
    void byThePlanATankHoldsWhatIsNotPlantedOfItsLoad() {
        // from 09:10:00 to 10:00:00 3 of 5 ha, 600 of 1,000 L
        assertThat(stopped("10:00").tanks()).containsExactly(new StoppedWork.Tank("P1", "L0002", 400, 1_000, false));
        assertThat(lines(stopped("10:00"), Map.of())).containsExactly("A 5.0 L0001 08:56:40", "A 3.0 L0002 10:00");
    }

    @Test
    void aTankThatWasEmptiedThatDayIsAskedAboutTooAndOneThatWasNeverFilledIsNot() {
        assertThat(stopped("20:00").tanks()).containsExactly(new StoppedWork.Tank("P1", "L0002", 0, 1_000, false));
        assertThat(stopped("06:00").tanks()).isEmpty();
    }

    @Test
    void moreLeftIsLessPlanted() {
        // 700 L left are 3.5 ha, so that 1.5 ha were planted
        StoppedWork stopped = stopped("10:00");
        assertThat(lines(stopped, Map.of("P1", 700.0))).containsExactly("A 5.0 L0001 08:56:40", "A 1.5 L0002 10:00");
        assertThat(tankL("10:00", SeasonLog.EMPTY, stopped.facts(Map.of("P1", 700.0))))
                .isEqualTo(700);
    }

    @Test
    void lessLeftIsMorePlanted() {
        StoppedWork stopped = stopped("10:00");
        assertThat(lines(stopped, Map.of("P1", 100.0))).containsExactly("A 5.0 L0001 08:56:40", "A 4.5 L0002 10:00");
        assertThat(tankL("10:00", SeasonLog.EMPTY, stopped.facts(Map.of("P1", 0.0))))
                .isZero();
    }

    @Test
    void whatTheLogHasIsNotSaidAgainAndNoMoreIsLeftThanItLeaves() {
        SeasonLog log = log(planted("08:30", 4, "L0001"), planted("09:40", 2, "L0002"));
        StoppedWork stopped = StoppedWork.of(PLAN.season(), PLAN.plan(), log, clock("10:00"));

        assertThat(stopped.tanks()).singleElement().satisfies(tank -> {
            assertThat(tank.mostL()).isCloseTo(600, within(1e-6));
            assertThat(tank.mayHold(600)).isTrue();
            assertThat(tank.mayHold(601)).isFalse();
            assertThat(tank.mayHold(-1)).isFalse();
        });
        assertThat(tankL("10:00", log, stopped.facts(Map.of("P1", 550.0)))).isCloseTo(550, within(1e-3));
    }

    @Test
    void aLogCannotSayThatNothingWasPlanted() {
        assertThat(stopped("10:00").tanks().get(0).mayHold(999)).isFalse();
        assertThat(stopped("10:00").tanks().get(0).mayHold(997)).isTrue();
    }

    @Property(tries = 100)
    void whatIsSaidIsWhatAReplanFinds(@ForAll long seed) {
        Random random = new Random(seed);
        LocalDateTime at = clock("07:40").plusMinutes(random.nextInt(230));
        List<Entry> some = new ArrayList<>();
        if (random.nextBoolean()) {
            some.add(planted("07:39", 0.5 + random.nextInt(3), "L0001"));
        }
        SeasonLog log = new SeasonLog(some);
        StoppedWork stopped = StoppedWork.of(PLAN.season(), PLAN.plan(), log, at);
        StoppedWork.Tank tank = stopped.tanks().get(0);
        double litres = Math.floor(tank.mostL() * 0.99 * random.nextDouble());

        assertThat(tankL(at.toLocalTime().toString(), log, stopped.facts(Map.of("P1", litres))))
                .isCloseTo(litres, within(1.0));
    }

    private static StoppedWork stopped(String clock) {
        return StoppedWork.of(PLAN.season(), PLAN.plan(), SeasonLog.EMPTY, clock(clock));
    }

    private static List<String> lines(StoppedWork stopped, Map<String, Double> leftL) {
        return stopped.facts(leftL).stream()
                .map(done -> {
                    Fact.Planted planted = (Fact.Planted) done.fact();
                    return planted.field() + " " + planted.areaHa() + " "
                            + planted.load().orElse("") + " " + done.at().toLocalTime();
                })
                .toList();
    }

    /** What a replan finds in the tank when that is logged, L. */
    private static double tankL(String clock, SeasonLog before, List<AsPlanned.Done> facts) {
        List<Entry> all = new ArrayList<>(before.entries());
        facts.forEach(done -> all.add(new Entry(500 + all.size(), done.at(), done.fact(), "")));
        return UnderWay.at(PLAN, clock, UnderWay.NOTHING_NEW, new SeasonLog(all))
                        .start()
                        .standing()
                        .planters()
                        .get("P1")
                        .tank()
                        .map(Standing.Tank::mix)
                        .map(mix -> mix.areaHa())
                        .orElse(0.0)
                * 200;
    }

    private static SeasonLog log(Entry... entries) {
        return new SeasonLog(List.of(entries));
    }

    private static Entry planted(String clock, double ha, String load) {
        return new Entry(
                clock(clock).getMinute() + 1,
                clock(clock),
                new Fact.Planted("A", ha, Optional.of("P1"), Optional.of(load)),
                "");
    }

    private static LocalDateTime clock(String clock) {
        return WorkedSeason.FIRST.atTime(LocalTime.parse(clock));
    }
}

package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.log.Entry;
import freshfurrow.model.log.Fact;
import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Mix;
import freshfurrow.model.season.Standing;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * What is in a tank when the log names its load. In the worked season two loads of 5 ha, 1,000 L each, plant field A of 10 ha: L0001 is
 * filled until 07:33:20 and planted until 08:56:40, its batch ends at 07:20:00; L0002 is filled until 09:10:00 and planted until 10:33:20,
 * its batch ends at 08:56:40. Mix keeps for 5 h.
 */
class LoggedLoadsTest {
    private static final WorkedPlan PLAN = new WorkedSeason().field("A", 10).plan("A");

    @Test
    void whatWasPlantedFromALoadIsGoneFromTheTankAndNoMore() {
        // by 08:00:00 the plan expects 1.6 ha done; it were 1.2 ha: 5 - 1.2 = 3.8 ha, 760 L, are in the tank
        UnderWay underWay = at("08:00", planted("07:50", 1.2, "L0001"));

        assertThat(tank(underWay))
                .contains(new Standing.Tank("L0001", "R1", new Mix("standard", 3.8, clock("12:20"), List.of("B0001"))));
        assertThat(underWay.start().plantedHa()).containsExactly(Map.entry("A", 1.2));
    }

    @Test
    void whatIsInTheTankIsPlantedBeforeANewLoadIsMade() {
        WorkedPlan rest = at("08:00", planted("07:50", 1.2, "L0001")).goOn();

        // 3.8 ha in 3,800 s; then 5 ha of the second load, 10 - 1.2 - 3.8
        assertThat(rest.planter("P1", "plant"))
                .containsExactly(
                        "1 08:00:00 - 1 09:03:20 plant A 3.800 ha", "1 09:16:40 - 1 10:40:00 plant A 5.000 ha");
        assertThat(rest.load(1).litres()).isEqualTo(760);
    }

    @Test
    void severalLinesOfALoadAddUp() {
        assertThat(leftHa(at("08:00", planted("07:45", 0.7, "L0001"), planted("07:50", 0.5, "L0001"))))
                .isEqualTo(3.8);
    }

    @Test
    void aLoadThatIsUsedUpWithinTheRoundingOfTheSheetsLeavesAnEmptyTank() {
        // sheets show 0.01 ha, so that a line may be off by 0.005 ha
        assertThat(tank(at("08:00", planted("07:55", 4.996, "L0001")))).isEmpty();
        assertThat(tank(at("08:00", planted("07:55", 5.2, "L0001")))).isEmpty();
        assertThat(leftHa(at("08:00", planted("07:55", 4.99, "L0001")))).isEqualTo(0.01);
    }

    @Test
    void whereThePlanIsDoneWithALoadWhatTheLogLeavesOfItIsStillThere() {
        UnderWay underWay = at("12:00", planted("09:00", 5, "L0001"), planted("11:50", 3, "L0002"));

        assertThat(tank(underWay))
                .contains(
                        new Standing.Tank("L0002", "R1", new Mix("standard", 2, clock("13:56:40"), List.of("B0002"))));
        // and 10 - 8 ha are left of the field: just what the tank holds
        WorkedPlan rest = underWay.goOn();
        assertThat(rest.planter("P1")).containsExactly("1 12:00:00 - 1 12:33:20 plant A 2.000 ha");
        assertThat(rest.plan().totals().batches()).isZero();
    }

    @Test
    void aLoadBeforeTheLastOneSaysNothingOfTheTank() {
        // by 10:00:00 the plan has planted 3 of the 5 ha of L0002
        assertThat(leftHa(at("10:00", planted("09:00", 4, "L0001")))).isEqualTo(2);
    }

    @Test
    void aLoadThatTheLogDoesNotNameIsAsPlanned() {
        UnderWay underWay = UnderWay.at(
                PLAN,
                "08:00",
                UnderWay.NOTHING_NEW,
                log(new Entry(1, clock("07:50"), new Fact.Planted("A", 1.2, Optional.of("P1"), Optional.empty()), "")));

        assertThat(leftHa(underWay)).isEqualTo(3.4);
    }

    @Test
    void mixIsAsOldAsItsBatchReallyIs() {
        // made at 07:08 instead of 07:20: good until 12:08
        UnderWay underWay = at("08:00", batch("07:08", "L0001"));

        assertThat(tank(underWay).orElseThrow().mix().deadline()).isEqualTo(clock("12:08"));
        assertThat(underWay.start().batches()).singleElement().satisfies(made -> {
            assertThat(made.end()).isEqualTo(clock("07:08"));
            assertThat(made.start()).isEqualTo(clock("06:53"));
        });
        assertThat(underWay.goOn().load(1).deadline()).isEqualTo(clock("12:08"));
    }

    @Test
    void mixOnARigIsAsOldAsItsBatchReallyIsToo() {
        // at 08:56:50 the second load's batch is made, and its transfer not yet over
        UnderWay underWay = at("08:56", batch("07:20", "L0001"), batch("08:55", "L0002"));

        Mix mix = underWay.start().standing().rigs().get("R1").mix().orElseThrow();
        assertThat(mix.batches()).containsExactly("B0002");
        assertThat(mix.deadline()).isEqualTo(clock("13:55"));
    }

    @Test
    void ofALoadOfWhichNotEveryBatchIsLoggedTheOldestCounts() {
        // a tank of 2,000 L takes 10 ha out of two batches; of the two only one is logged, and later than planned
        WorkedPlan twoBatches = new WorkedSeason()
                .planter("P1", planter -> planter.tank(2_000))
                .field("A", 10)
                .plan("A");
        Plan.Batch oldest = twoBatches.plan().batches().get(0);
        LocalDateTime later = oldest.end().plusMinutes(7);

        UnderWay one = UnderWay.at(twoBatches, "08:30", UnderWay.NOTHING_NEW, log(entry(1, later, made("L0001"))));
        UnderWay both = UnderWay.at(
                twoBatches,
                "08:30",
                UnderWay.NOTHING_NEW,
                log(entry(1, later, made("L0001")), entry(2, later.plusMinutes(20), made("L0001"))));

        assertThat(tank(one).orElseThrow().mix().deadline())
                .isEqualTo(oldest.end().plusHours(5));
        assertThat(tank(both).orElseThrow().mix().deadline()).isEqualTo(later.plusHours(5));
    }

    private static UnderWay at(String clock, Entry... entries) {
        return UnderWay.at(PLAN, clock, UnderWay.NOTHING_NEW, log(entries));
    }

    private static SeasonLog log(Entry... entries) {
        return new SeasonLog(List.of(entries));
    }

    private static Entry planted(String clock, double ha, String load) {
        return entry(
                clock(clock).getMinute() + 1,
                clock(clock),
                new Fact.Planted("A", ha, Optional.of("P1"), Optional.of(load)));
    }

    private static Entry batch(String clock, String load) {
        return entry(clock(clock).getMinute() + 1, clock(clock), made(load));
    }

    private static Fact made(String load) {
        return new Fact.BatchMade("R1", Map.of("heap", 50.0), List.of(load), Optional.empty());
    }

    private static Entry entry(int number, LocalDateTime at, Fact fact) {
        return new Entry(number, at, fact, "");
    }

    private static LocalDateTime clock(String clock) {
        return WorkedSeason.FIRST.atTime(LocalTime.parse(clock));
    }

    private static Optional<Standing.Tank> tank(UnderWay underWay) {
        return underWay.start().standing().planters().get("P1").tank();
    }

    private static double leftHa(UnderWay underWay) {
        return tank(underWay).orElseThrow().mix().areaHa();
    }
}

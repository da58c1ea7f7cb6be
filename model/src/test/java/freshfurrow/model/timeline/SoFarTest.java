package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.log.Entry;
import freshfurrow.model.log.Fact;
import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.plan.PlanStart;
import freshfurrow.model.progress.SoFar;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Outage;
import freshfurrow.model.season.Standing;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/**
 * What is logged counts instead of the plan. By 08:00:00 the worked plan has planted 1.6 ha of A, taken 50 kg from the heap of 10,000 kg and drawn
 * 2,000 L.
 */
class SoFarTest {
    private static final WorkedPlan PLAN = new WorkedSeason().field("A", 10).plan("A");
    private static final LocalDateTime NOW = WorkedSeason.FIRST.atTime(8, 0);

    @Test
    void withoutALogAllIsAsPlanned() {
        SoFar.Result soFar = soFar(false);

        assertThat(soFar.followedUntil()).isEqualTo(NOW);
        assertThat(soFar.loggedFields()).isEmpty();
        assertThat(soFar.start().plantedHa()).containsExactly(Map.entry("A", 1.6));
    }

    @Test
    void aLotFromWhichBatchesWereLoggedHasWhatTheyLeave() {
        PlanStart start = soFar(false, new Fact.BatchMade("R1", Map.of("heap", 60.0), List.of(), Optional.empty()))
                .start();

        assertThat(start.lots()).containsExactly(new CompostLot("heap", 9_940, WorkedSeason.FIRST));
    }

    @Test
    void deliveriesAndLossesChangeWhatThePlanLeaves() {
        // 10,000 - 50 as planned + 500 - 20
        PlanStart start = soFar(
                        false,
                        new Fact.CompostDelivered("heap", 500),
                        new Fact.CompostSpoiled("heap", OptionalDouble.of(20)))
                .start();

        assertThat(start.lots()).containsExactly(new CompostLot("heap", 10_430, WorkedSeason.FIRST));
    }

    @Test
    void waterLoggedTodayCountsInsteadOfThePlans() {
        assertThat(soFar(false, new Fact.WaterDrawn("well", "R1", 1_500))
                        .start()
                        .standing()
                        .drawnL())
                .containsExactly(Map.entry("well", 1_500.0));
    }

    @Test
    void aMachineOfWhichNobodyKnowsWhenItWorksAgainIsDownUntilTheSeasonsEnd() {
        SoFar.Result soFar = soFar(false, new Fact.MachineDown("R1", Optional.empty()));

        assertThat(soFar.start().outages())
                .containsExactly(new Outage(
                        "R1",
                        WorkedSeason.FIRST.atTime(7, 50),
                        WorkedSeason.day(4).atStartOfDay()));
        assertThat(soFar.followedUntil()).isEqualTo(WorkedSeason.FIRST.atTime(7, 50));
        // 07:33:20 to 07:50:00 are 1,000 s: 1 ha
        assertThat(soFar.start().plantedHa()).containsExactly(Map.entry("A", 1.0));
    }

    @Test
    void entriesLaterThanNowDoNotCountYet() {
        SeasonLog later = new SeasonLog(List.of(
                new Entry(1, NOW.plusHours(1), new Fact.Planted("A", 5, Optional.empty(), Optional.empty()), "")));

        assertThat(SoFar.of(PLAN.season(), PLAN.plan(), NOW, UnderWay.NOTHING_NEW, later, false)
                        .start()
                        .plantedHa())
                .containsExactly(Map.entry("A", 1.6));
    }

    @Test
    void nothingButTheLogCountsWhereThatIsAskedFor() {
        SoFar.Result soFar = soFar(true, new Fact.Planted("A", 0.5, Optional.of("P1"), Optional.empty()));

        assertThat(soFar.start().plantedHa()).containsExactly(Map.entry("A", 0.5));
        assertThat(soFar.start().lots()).containsExactly(new CompostLot("heap", 10_000, WorkedSeason.FIRST));
        assertThat(soFar.start().standing().planters())
                .containsExactly(Map.entry(
                        "P1", new Standing.OfPlanter("A", NOW, Optional.empty(), Optional.empty(), Optional.empty())));
        assertThat(soFar.start().standing().rigs())
                .containsExactly(Map.entry("R1", new Standing.OfRig("yard", NOW, 0, Optional.empty(), false)));
    }

    @Test
    void aLoggedBatchTakesItsCompostFromOnBoard() {
        // 100 kg loaded; the plan's batch takes 50 kg, the logged one 60 kg
        WorkedPlan fetched =
                new WorkedSeason().heapInTheYard(10_000).field("A", 10).plan("A");

        assertThat(compost(fetched)).isEqualTo(Map.of("heap", 50.0));
        assertThat(compost(fetched, new Fact.BatchMade("R1", Map.of("heap", 60.0), List.of(), Optional.empty())))
                .isEqualTo(Map.of("heap", 40.0));
        assertThat(compost(fetched, new Fact.BatchMade("R1", Map.of("heap", 100.0), List.of(), Optional.empty())))
                .isEmpty();
    }

    private static Map<String, Double> compost(WorkedPlan plan, Fact... facts) {
        PlanStart start = SoFar.of(plan.season(), plan.plan(), NOW, UnderWay.NOTHING_NEW, log(facts), false)
                .start();
        assertThat(start.lots()).containsExactly(new CompostLot("heap", 9_900, WorkedSeason.FIRST));
        return start.standing().rigs().get("R1").compostKg();
    }

    private static SoFar.Result soFar(boolean onlyLogged, Fact... facts) {
        return SoFar.of(PLAN.season(), PLAN.plan(), NOW, UnderWay.NOTHING_NEW, log(facts), onlyLogged);
    }

    private static SeasonLog log(Fact... facts) {
        List<Entry> entries = new ArrayList<>();
        for (Fact fact : facts) {
            entries.add(new Entry(entries.size() + 1, WorkedSeason.FIRST.atTime(7, 50), fact, ""));
        }
        return new SeasonLog(entries);
    }
}

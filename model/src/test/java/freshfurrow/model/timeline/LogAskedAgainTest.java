package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.log.Entry;
import freshfurrow.model.log.Fact;
import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.plan.PlanStart;
import freshfurrow.model.progress.News;
import freshfurrow.model.progress.SoFar;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Outage;
import freshfurrow.model.season.Rain;
import freshfurrow.model.season.Season;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * A plan that knows what the log said, and a log that says more, the same, or no more of it. The plan was made anew at 07:10:00; by 07:30:00 of
 * the first day nothing is planted, and 50 kg of 10,000 kg are extracted.
 */
class LogAskedAgainTest {
    private static final WorkedPlan PLAN = new WorkedSeason().field("A", 10).plan("A");
    private static final Season SEASON = PLAN.season();
    private static final LocalDateTime THEN = WorkedSeason.FIRST.atTime(7, 10);
    private static final LocalDateTime NOW = WorkedSeason.FIRST.atTime(7, 30);

    private static final Fact RAIN = new Fact.RainMeasured(4.7625);
    private static final Fact DOWN = new Fact.MachineDown("R1", Optional.empty());

    private final List<Entry> entries = new ArrayList<>();
    private WorkedPlan plan = PLAN;

    @Test
    void voidRainCountsNoMore() {
        log(RAIN);
        planAgain(UnderWay.NOTHING_NEW);
        assertThat(plan.plan().start().orElseThrow().rain()).hasSize(1);

        log(new Fact.Voided(1));

        assertThat(start().rain()).isEmpty();
    }

    @Test
    void aMachineThatIsNotDownAfterAllWorks() {
        log(DOWN);
        planAgain(UnderWay.NOTHING_NEW);
        assertThat(plan.plan().start().orElseThrow().outages()).hasSize(1);

        log(new Fact.Voided(1));
        log(new Fact.MachineDown("R1", Optional.of(THEN.plusHours(1))));

        assertThat(start().outages()).containsExactly(new Outage("R1", THEN.minusMinutes(5), THEN.plusHours(1)));
    }

    @Test
    void whatNoLogSaidStays() {
        Rain rain = new Rain(WorkedSeason.FIRST, 7 * 3600, 3);
        Outage outage = new Outage("R1", THEN, THEN.plusHours(1));

        planAgain(new News(List.of(rain), List.of(outage), Set.of()));

        assertThat(start().rain()).containsExactly(rain);
        assertThat(start().outages()).containsExactly(outage);
    }

    /** 3/16 in: a plan file keeps thousandths of a millimetre. */
    @Test
    void rainThatThePlanKnewOfIsNoNewRain() {
        log(RAIN);
        planAgain(UnderWay.NOTHING_NEW);

        assertThat(soFar().followedUntil()).isEqualTo(NOW);
        assertThat(start().rain()).containsExactly(new Rain(WorkedSeason.FIRST, 7 * 3600 + 300, 4.763));
    }

    @Test
    void deliveriesAndLossesCountOnce() {
        log(new Fact.CompostDelivered("heap", 500));
        log(new Fact.CompostSpoiled("heap", OptionalDouble.of(20)));
        planAgain(UnderWay.NOTHING_NEW);

        // 10,000 - 50 as planned + 500 - 20
        assertThat(start().lots()).containsExactly(heap(10_430));

        log(new Fact.CompostSpoiled("heap", OptionalDouble.of(30)));
        assertThat(start().lots()).containsExactly(heap(10_400));

        log(new Fact.Voided(2));
        assertThat(start().lots()).containsExactly(heap(10_420));
    }

    @Test
    void aHeapThatIsNotSpoiledAfterAllHasWhatThePlanLeaves() {
        log(new Fact.CompostSpoiled("heap", OptionalDouble.empty()));
        planAgain(UnderWay.NOTHING_NEW);
        assertThat(start().lots()).isEmpty();

        log(new Fact.Voided(1));

        // the batch of 50 kg was begun at 07:05:00
        assertThat(start().lots()).containsExactly(heap(9_950));
    }

    /** What was delivered before is of no use either. */
    @Test
    void aHeapThatWasFoundSpoiledHasWhatCameSince() {
        log(new Fact.CompostDelivered("heap", 500));
        planAgain(new News(List.of(), List.of(), Set.of("heap")));
        assertThat(start().lots()).isEmpty();

        log(new Fact.CompostDelivered("heap", 70));

        assertThat(start().lots()).containsExactly(heap(70));
    }

    @Test
    void batchesThatWereNotMadeAfterAllLeaveWhatThePlanLeaves() {
        log(new Fact.BatchMade("R1", Map.of("heap", 60.0), List.of(), Optional.empty()));
        planAgain(UnderWay.NOTHING_NEW);
        assertThat(start().lots()).containsExactly(heap(9_940));

        log(new Fact.Voided(1));

        assertThat(start().lots()).containsExactly(heap(9_950));
    }

    private static CompostLot heap(double kg) {
        return new CompostLot("heap", kg, WorkedSeason.FIRST);
    }

    private void log(Fact fact) {
        entries.add(new Entry(entries.size() + 1, THEN.minusMinutes(5), fact, ""));
    }

    private void planAgain(News news) {
        plan = UnderWay.at(PLAN, "07:10", news, new SeasonLog(entries)).goOn();
    }

    private PlanStart start() {
        return soFar().start();
    }

    private SoFar.Result soFar() {
        return SoFar.of(SEASON, plan.plan(), NOW, UnderWay.NOTHING_NEW, new SeasonLog(entries), false);
    }
}
